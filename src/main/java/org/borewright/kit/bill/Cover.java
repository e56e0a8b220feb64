package org.borewright.kit.bill;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.borewright.catalog.Money;
import org.borewright.catalog.PartNumber;

/**
 * One way to cover the needs of a kit with boxes.
 *
 * @param picks the boxes taken and how many of each
 */
record Cover(List<Pick> picks) {

    /**
     * So many of one box.
     *
     * @param packed the box
     * @param quantity how many
     */
    record Pick(Packed packed, int quantity) {

        /** 0 when all lie on the shelf, else the days until they are there. */
        int leadDays() {
            return quantity <= packed.offer().onHand()
                    ? 0
                    : packed.offer().leadDays().orElseThrow();
        }
    }

    Optional<Money> total() {
        return picks.stream()
                .map(pick -> pick.packed().offer().price().times(pick.quantity()))
                .reduce(Money::plus);
    }

    /** What is left over, parts that nobody asked for included, by number. */
    List<Kit.Surplus> surplus(List<Need> needs) {
        TreeMap<PartNumber, Integer> over = new TreeMap<>();
        picks.forEach(pick -> pick.packed()
                .box()
                .contents()
                .forEach((number, count) -> over.merge(number, count * pick.quantity(), Integer::sum)));
        needs.forEach(need -> over.merge(need.number(), -need.count(), Integer::sum));
        return over.entrySet().stream()
                .filter(entry -> entry.getValue() > 0)
                .map(entry -> new Kit.Surplus(entry.getKey(), entry.getValue()))
                .toList();
    }
}
