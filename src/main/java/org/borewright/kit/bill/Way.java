package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A way to fill what is open of some needs: one box first, then the rest. What it comes to adds up, so the best way on from what is left
 * open is the same whatever was taken before.
 *
 * @param parts how many parts are in its boxes; the fewest leave the least over
 * @param boxOrder the sum over its boxes of their place in box order
 * @param price in minor units of the one currency
 * @param first the box taken first, and how many; empty where none is
 * @param rest the ways taken after it, which share no box
 */
record Way(long parts, long boxOrder, long price, Optional<Cover.Pick> first, List<Way> rest) {

    /** Nothing is open. */
    static final Way NOTHING = new Way(0, 0, 0, Optional.empty(), List.of());

    /** The order of {@link Cover#PREFERENCE} among what can be had equally soon, the numbers apart. */
    static final Comparator<Way> PREFERENCE = Comparator.comparingLong(Way::parts)
            .thenComparingLong(Way::boxOrder)
            .thenComparingLong(Way::price);

    /** Ways of needs that share no box, together. */
    static Way together(List<Way> ways) {
        long parts = 0;
        long boxOrder = 0;
        long price = 0;
        for (Way way : ways) {
            parts += way.parts;
            boxOrder += way.boxOrder;
            price += way.price;
        }
        return new Way(parts, boxOrder, price, Optional.empty(), ways);
    }

    /** All its boxes, in {@linkplain Packed#ORDER their order}. */
    List<Cover.Pick> picks() {
        List<Cover.Pick> picks = new ArrayList<>();
        collect(picks);
        picks.sort(Comparator.comparing(Cover.Pick::packed, Packed.ORDER));
        return picks;
    }

    private void collect(List<Cover.Pick> picks) {
        first.ifPresent(picks::add);
        rest.forEach(way -> way.collect(picks));
    }
}
