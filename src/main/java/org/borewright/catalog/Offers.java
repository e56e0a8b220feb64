package org.borewright.catalog;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Prices and stock at one moment: apart from what fits, for these change daily and that does not.
 *
 * @param byNumber every number that has a price
 */
public record Offers(Map<PartNumber, Offer> byNumber) {

    /** Copies the map, sorted by number: what is told of it is told in one order in every process. */
    public Offers {
        byNumber = Collections.unmodifiableMap(new LinkedHashMap<>(new TreeMap<>(byNumber)));
    }

    /** The offer for a number; empty when it is not sold by itself. */
    public Optional<Offer> of(PartNumber number) {
        return Optional.ofNullable(byNumber.get(number));
    }

    /** The same with so many more on the shelf of some numbers; one that is not sold by itself stays out. */
    public Offers withMore(Map<PartNumber, Integer> onHand) {
        Map<PartNumber, Offer> more = new TreeMap<>(byNumber);
        onHand.forEach((number, count) -> more.computeIfPresent(number, (same, offer) -> offer.withMore(count)));
        return new Offers(more);
    }
}
