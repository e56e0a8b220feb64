package org.borewright.api.order.answer;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.borewright.api.match.answer.BillAnswer.CoversAnswer;
import org.borewright.api.match.answer.BillAnswer.LineAnswer;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;

/**
 * What the quote accepted sells, by number: what the catalogue says of it since is of no matter, for these parts go in.
 *
 * @param boxes that are put aside for it
 * @param parts that they hold for it, and what the owner brings
 * @param ringSets among the parts
 */
public record Sold(Set<PartNumber> boxes, Set<PartNumber> parts, Set<PartNumber> ringSets) {

    /** Nothing, for no yes stands. */
    public static final Sold NOTHING = new Sold(Collections.emptySet(), Collections.emptySet(), Collections.emptySet());

    /** Copies the sets. */
    public Sold {
        boxes = Collections.unmodifiableSet(new TreeSet<>(boxes));
        parts = Collections.unmodifiableSet(new TreeSet<>(parts));
        ringSets = Collections.unmodifiableSet(new TreeSet<>(ringSets));
    }

    /** What an offer sells. */
    public static Sold of(OfferDocument offer) {
        return new Sold(
                offer.parts().stream()
                        .map(line -> new PartNumber(line.number()))
                        .collect(Collectors.toSet()),
                parts(offer, part -> true),
                parts(offer, part -> part.part().equals(Part.Kind.RING_SET.label())));
    }

    private static Set<PartNumber> parts(OfferDocument offer, Predicate<CoversAnswer> which) {
        return Stream.concat(
                        offer.parts().stream().map(LineAnswer::covers),
                        Optional.ofNullable(offer.ownPistons()).map(OfferDocument.OwnPistonsAnswer::covers).stream())
                .flatMap(covers -> covers.stream())
                .filter(which)
                .map(part -> new PartNumber(part.number()))
                .collect(Collectors.toSet());
    }

    /** All of it. */
    public Set<PartNumber> numbers() {
        Set<PartNumber> all = new TreeSet<>(boxes);
        all.addAll(parts);
        return all;
    }
}
