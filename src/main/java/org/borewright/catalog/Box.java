package org.borewright.catalog;

import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Something sold under one number: what is in it.
 *
 * @param number the number it is ordered by
 * @param kind how it is packed
 * @param contents how many of each part, at least one of one
 */
public record Box(PartNumber number, Kind kind, SortedMap<PartNumber, Integer> contents) {

    /** How a box is packed, in the order in which a shop prefers them. */
    public enum Kind {
        /** All of one engine. */
        ENGINE_BOX("engine box"),
        /** All of one cylinder. */
        CYLINDER_BOX("cylinder box"),
        /** Several of one part. */
        PACK("pack"),
        /** One part alone. */
        LOOSE("loose");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The words as typed and shown. */
        public String label() {
            return label;
        }
    }

    /** @throws IllegalArgumentException if it is empty or holds less than one of a part */
    public Box {
        contents = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(contents));
        if (contents.isEmpty() || contents.values().stream().anyMatch(count -> count < 1)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "box %s holds nothing", number));
        }
    }

    /** A part sold by itself. */
    public static Box loose(PartNumber part) {
        return new Box(part, Kind.LOOSE, new TreeMap<>(Map.of(part, 1)));
    }
}
