package org.borewright.kit.bill;

import java.util.Comparator;
import java.util.List;
import org.borewright.catalog.Box;
import org.borewright.catalog.Offer;

/**
 * A box that is sold, and how many it holds of each need.
 *
 * @param box the box
 * @param offer its price and stock
 * @param holds for each need, in the order of the needs, how many parts are in it
 * @param parts how many parts are in it, needed or not
 */
record Packed(Box box, Offer offer, List<Integer> holds, int parts) {

    /** Boxes that serve several needs at once, then box order, then the numbers. */
    static final Comparator<Packed> ORDER = Comparator.comparing((Packed packed) -> !packed.servesSeveral())
            .thenComparing(packed -> packed.box().kind())
            .thenComparing(packed -> packed.box().number());

    static Packed of(Box box, Offer offer, List<Need> needs) {
        return new Packed(
                box,
                offer,
                needs.stream()
                        .map(need -> box.contents().getOrDefault(need.number(), 0))
                        .toList(),
                box.contents().values().stream().mapToInt(Integer::intValue).sum());
    }

    boolean isOfUse() {
        return served() > 0;
    }

    /** Whether it holds several of the needs, so that what is taken for one serves another. */
    boolean servesSeveral() {
        return served() > 1;
    }

    private long served() {
        return holds.stream().filter(count -> count > 0).count();
    }

    /** How many of it can be had within so many days. */
    int obtainable(int days) {
        boolean more = offer.leadDays().isPresent() && offer.leadDays().getAsInt() <= days;
        return more ? Integer.MAX_VALUE : offer.onHand();
    }
}
