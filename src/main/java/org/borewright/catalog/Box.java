package org.borewright.catalog;

import java.util.Collections;
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
        ENGINE_BOX("engine box", 0),
        /** All of one cylinder. */
        CYLINDER_BOX("cylinder box", 1),
        /** Several of one part. */
        PACK("pack", 2),
        /** One part alone. */
        LOOSE("loose", 3);

        private final String label;
        private final int order;

        Kind(String label, int order) {
            this.label = label;
            this.order = order;
        }

        /** Its place in the order of preference, from 0. */
        public int order() {
            return order;
        }

        /** The words as typed and shown. */
        public String label() {
            return label;
        }
    }

    /**
     * In how many ways boxes of one size may be taken together, at the most: the kits that parts of the size make, times 1 + the number that
     * can be of use, multiplied over the boxes that hold several kinds of part. The best kit is looked for in all of them.
     */
    public static int mostWays() {
        return 50_000;
    }

    /** Of how many boxes no more than the same one part may be of use. */
    public static int mostPacks() {
        return 10;
    }

    /** @throws IllegalArgumentException if it is empty or holds less than one of a part */
    public Box {
        contents = Collections.unmodifiableSortedMap(new TreeMap<>(contents));
        if (contents.isEmpty() || contents.values().stream().anyMatch(count -> count < 1)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "box %s holds nothing", number));
        }
    }

    /** A part sold by itself. */
    public static Box loose(PartNumber part) {
        return new Box(part, Kind.LOOSE, new TreeMap<>(Map.of(part, 1)));
    }
}
