package org.borewright.catalog;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.borewright.catalog.Listing.Use;

/** Finds out, once per catalogue, what is known of every number. */
final class Listings {

    private final SortedMap<PartNumber, Part> parts = new TreeMap<>();
    private final SortedMap<PartNumber, Box> boxes = new TreeMap<>();
    private final SortedMap<PartNumber, Set<Use>> uses = new TreeMap<>();
    private final SortedMap<PartNumber, Set<PartNumber>> soldIn = new TreeMap<>();

    private Listings(Collection<Shelf> shelves) {
        shelves.forEach(this::put);
    }

    static SortedMap<PartNumber, Listing> of(Collection<Shelf> shelves, Map<PartNumber, Withdrawal> withdrawals) {
        return new Listings(shelves).all(withdrawals);
    }

    private SortedMap<PartNumber, Listing> all(Map<PartNumber, Withdrawal> withdrawals) {
        Set<PartNumber> numbers = new TreeSet<>(withdrawals.keySet());
        numbers.addAll(parts.keySet());
        numbers.addAll(boxes.keySet());
        SortedMap<PartNumber, Listing> listings = new TreeMap<>();
        numbers.forEach(number -> listings.put(number, listing(number, withdrawals)));
        return listings;
    }

    private Listing listing(PartNumber number, Map<PartNumber, Withdrawal> withdrawals) {
        return new Listing(
                number,
                Optional.ofNullable(parts.get(number)),
                Optional.ofNullable(boxes.get(number)),
                Optional.ofNullable(withdrawals.get(number)),
                List.copyOf(uses.getOrDefault(number, Set.of())),
                List.copyOf(soldIn.getOrDefault(number, Set.of())));
    }

    private void put(Shelf shelf) {
        Map<PartNumber, List<Use>> onThisShelf = new TreeMap<>();
        for (Part part : (Iterable<Part>) partsOf(shelf)::iterator) {
            parts.put(part.number(), part);
            onThisShelf.merge(part.number(), List.of(use(shelf, part)), Listings::both);
        }
        for (Box box : shelf.boxes()) {
            boxes.put(box.number(), box);
            box.contents()
                    .keySet()
                    .forEach(part ->
                            soldIn.computeIfAbsent(part, any -> new TreeSet<>()).add(box.number()));
            onThisShelf.put(box.number(), usesOf(box, onThisShelf));
        }
        onThisShelf.forEach((number, here) ->
                uses.computeIfAbsent(number, any -> new LinkedHashSet<>()).addAll(inOrder(shelf, here)));
    }

    private static Stream<Part> partsOf(Shelf shelf) {
        Parts parts = shelf.parts();
        return Stream.of(
                        parts.pistons(),
                        parts.ringSets(),
                        parts.pins(),
                        parts.clips(),
                        parts.bearings(),
                        parts.gasketKits(),
                        parts.headGaskets(),
                        parts.baseGaskets(),
                        shelf.fasteners().stream()
                                .flatMap(fastener -> fastener.singleUse().stream())
                                .toList())
                .flatMap(List::stream);
    }

    private static Use use(Shelf shelf, Part part) {
        Optional<String> size = part instanceof Piston piston
                ? Optional.of(piston.size())
                : part instanceof RingSet rings ? Optional.of(rings.size()) : Optional.empty();
        return new Use(shelf.engine().code(), size);
    }

    /** A box serves the sizes of what is in it; only one with nothing of a size serves them all. */
    private static List<Use> usesOf(Box box, Map<PartNumber, List<Use>> ofParts) {
        List<Use> all = box.contents().keySet().stream()
                .flatMap(part -> ofParts.getOrDefault(part, List.of()).stream())
                .distinct()
                .toList();
        List<Use> sized = all.stream().filter(use -> use.size().isPresent()).toList();
        return sized.isEmpty() ? all : sized;
    }

    private static List<Use> both(List<Use> some, List<Use> others) {
        List<Use> both = new ArrayList<>(some);
        both.addAll(others);
        return both;
    }

    private static List<Use> inOrder(Shelf shelf, List<Use> uses) {
        List<Use> inOrder = new ArrayList<>();
        uses.stream().filter(use -> use.size().isEmpty()).distinct().forEach(inOrder::add);
        shelf.sizes().stream()
                .map(size -> new Use(shelf.engine().code(), Optional.of(size.label())))
                .filter(uses::contains)
                .forEach(inOrder::add);
        return inOrder;
    }
}
