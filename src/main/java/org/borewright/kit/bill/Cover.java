package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Money;
import org.borewright.catalog.Offer;

/**
 * One way to cover the needs of a kit with boxes.
 *
 * @param picks the boxes taken and how many of each
 * @param surplus how many parts are left over
 */
record Cover(List<Pick> picks, int surplus) {

    /**
     * Complete from the shelf before complete later; then the least left over (so an exact cover comes first); then the earliest; then box
     * order, engine box before cylinder box before loose; then the price; then the numbers, so that the answer never depends on chance.
     */
    static final Comparator<Cover> PREFERENCE = Comparator.comparing((Cover cover) -> cover.leadDays() > 0)
            .thenComparing(Cover::surplus)
            .thenComparing(Cover::leadDays)
            .thenComparing(Cover::boxOrder)
            .thenComparing(cover -> cover.total().map(Money::amount).orElseThrow())
            .thenComparing(Cover::numbers);

    /**
     * So many of one box.
     *
     * @param packed the box
     * @param offer its price and stock
     * @param quantity how many
     */
    record Pick(Packed packed, Offer offer, int quantity) {

        /** 0 when all lie on the shelf, else the days until they are there. */
        int leadDays() {
            return quantity <= offer.onHand() ? 0 : offer.leadDays().orElseThrow();
        }
    }

    int leadDays() {
        return picks.stream().mapToInt(Pick::leadDays).max().orElse(0);
    }

    private int boxOrder() {
        return picks.stream()
                .mapToInt(pick -> pick.packed().box().kind().order() * pick.quantity())
                .sum();
    }

    Optional<Money> total() {
        return picks.stream()
                .map(pick -> pick.offer().price().times(pick.quantity()))
                .reduce(Money::plus);
    }

    private String numbers() {
        List<String> numbers = new ArrayList<>();
        picks.forEach(pick -> numbers.add(pick.packed().box().number().text()));
        return String.join(" ", numbers);
    }
}
