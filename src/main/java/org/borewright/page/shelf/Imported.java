package org.borewright.page.shelf;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.borewright.catalog.Box;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.Part;

/**
 * What the last import changed. Files are read into an empty database and never over another catalogue, so there was nothing before it, and
 * all that is listed came with it.
 *
 * @param engines how many came
 * @param lines the numbers that came, in the order of a kit list
 */
record Imported(int engines, List<Line> lines) {

    /**
     * The numbers of one kind.
     *
     * @param what they are
     * @param count how many came, at least one
     */
    record Line(String what, long count) {}

    static Imported of(Catalogue catalogue) {
        Map<Part.Kind, Long> parts = catalogue.listings().values().stream()
                .flatMap(listing -> listing.part().stream())
                .collect(groupingBy(Part::kind, () -> new EnumMap<>(Part.Kind.class), counting()));
        Map<Box.Kind, Long> boxes = catalogue.listings().values().stream()
                .flatMap(listing -> listing.box().stream())
                .collect(groupingBy(Box::kind, () -> new EnumMap<>(Box.Kind.class), counting()));
        long withdrawn = catalogue.listings().values().stream()
                .filter(Imported::isKnownAsWithdrawnAlone)
                .count();
        return new Imported(
                catalogue.shelves().size(),
                Stream.of(
                                parts.entrySet().stream()
                                        .map(kind -> new Line(kind.getKey().label(), kind.getValue())),
                                boxes.entrySet().stream()
                                        .map(kind -> new Line(kind.getKey().label(), kind.getValue())),
                                Stream.of(new Line("withdrawn, of which no more is known", withdrawn)))
                        .flatMap(lines -> lines)
                        .filter(line -> line.count() > 0)
                        .toList());
    }

    private static boolean isKnownAsWithdrawnAlone(Listing listing) {
        return listing.part().isEmpty() && listing.box().isEmpty();
    }
}
