package org.borewright.api.order.answer;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.api.match.answer.BillAnswer.CoversAnswer;
import org.borewright.api.match.answer.BillAnswer.LineAnswer;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;

/**
 * What a quote sells, by number: what the catalogue says of it since is of no matter, for these parts go in.
 *
 * @param boxes that are put aside for it, each with the parts that it holds for it
 * @param parts of all of them, and what the owner brings
 * @param ringSets among the parts
 */
public record Sold(Map<PartNumber, Set<PartNumber>> boxes, Set<PartNumber> parts, Set<PartNumber> ringSets) {

    /** Nothing, for no yes stands. */
    public static final Sold NOTHING = new Sold(Collections.emptyMap(), Collections.emptySet(), Collections.emptySet());

    /** Copies the map and the sets. */
    public Sold {
        boxes = Collections.unmodifiableMap(new TreeMap<>(boxes));
        parts = Collections.unmodifiableSet(new TreeSet<>(parts));
        ringSets = Collections.unmodifiableSet(new TreeSet<>(ringSets));
    }

    /** What an offer sells. */
    public static Sold of(OfferDocument offer) {
        Map<PartNumber, Set<PartNumber>> boxes = new TreeMap<>();
        for (LineAnswer line : offer.parts()) {
            boxes.computeIfAbsent(new PartNumber(line.number()), first -> new TreeSet<>())
                    .addAll(numbers(line.covers().stream()));
        }
        return new Sold(boxes, numbers(covered(offer)), numbers(covered(offer).filter(isA(Part.Kind.RING_SET))));
    }

    private static Stream<CoversAnswer> covered(OfferDocument offer) {
        return Stream.concat(
                offer.parts().stream().flatMap(line -> line.covers().stream()),
                Optional.ofNullable(offer.ownPistons()).stream().flatMap(own -> own.covers().stream()));
    }

    private static Predicate<CoversAnswer> isA(Part.Kind kind) {
        return part -> part.part().equals(kind.label());
    }

    private static Set<PartNumber> numbers(Stream<CoversAnswer> parts) {
        return parts.map(part -> new PartNumber(part.number())).collect(Collectors.toSet());
    }

    /** All of it. */
    public Set<PartNumber> numbers() {
        Set<PartNumber> all = new TreeSet<>(parts);
        all.addAll(boxes.keySet());
        return all;
    }

    /** Some of its boxes, with what they hold for it. */
    public Set<PartNumber> in(Set<PartNumber> some) {
        Set<PartNumber> all = new TreeSet<>();
        boxes.forEach((box, held) -> {
            if (some.contains(box)) {
                all.add(box);
                all.addAll(held);
            }
        });
        return all;
    }
}
