package org.borewright.api.lookup.part;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Listing;

/**
 * A box and what is in it.
 *
 * @param number it is ordered by
 * @param packed engine box, cylinder box, pack
 * @param contents how many of each part
 */
public record BoxAnswer(String number, String packed, List<ContentAnswer> contents) {

    /**
     * One part of a box.
     *
     * @param number of the part
     * @param count how many
     */
    public record ContentAnswer(String number, int count) {}

    public static Stream<BoxAnswer> of(Listing listing) {
        return listing.box().stream()
                .map(box -> new BoxAnswer(listing.number().text(), box.kind().label(), contents(box)));
    }

    static List<ContentAnswer> contents(Box box) {
        return box.contents().entrySet().stream()
                .map(content -> new ContentAnswer(content.getKey().text(), content.getValue()))
                .toList();
    }
}
