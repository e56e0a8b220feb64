package org.borewright.kit.bill;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Box;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Money;
import org.borewright.catalog.Part;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Withdrawal;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.choice.Outfit;

/**
 * A bill of materials that covers the needs of a rebuild.
 *
 * @param outfit the rings, pin and clips it stands on
 * @param gaskets the gasket kit it stands on, and what is loose in place of its own
 * @param needs what must be covered
 * @param lines what to order
 * @param surplus what the boxes hold beyond the needs; never silent
 * @param missing what cannot be had at all
 * @param total of all lines; empty when there is none
 */
public record Kit(
        Outfit outfit,
        Gaskets gaskets,
        List<Need> needs,
        List<Line> lines,
        List<Surplus> surplus,
        List<Missing> missing,
        Optional<Money> total) {

    /** Copies the lists. */
    public Kit {
        needs = List.copyOf(needs);
        lines = List.copyOf(lines);
        surplus = List.copyOf(surplus);
        missing = List.copyOf(missing);
    }

    /** What was checked of its gaskets, among several sets. */
    public Optional<GasketFit> over(List<GasketFit> fits) {
        return fits.stream().filter(fit -> fit.gaskets().equals(gaskets)).findFirst();
    }

    /** Whether every need is covered. */
    public boolean isComplete() {
        return missing.isEmpty();
    }

    /** The days until the last line is there; 0 when all lies on the shelf. */
    public int leadDays() {
        return lines.stream().mapToInt(Line::leadDays).max().orElse(0);
    }

    /** Whether every need is covered from the shelf. */
    public boolean isCompleteNow() {
        return isComplete() && leadDays() == 0;
    }

    /** How far from one engine box it is: the sum over its boxes of their place in box order. */
    int boxOrder() {
        return lines.stream()
                .mapToInt(line -> line.box().kind().order() * line.quantity())
                .sum();
    }

    /** How many parts are left over. */
    int leftOver() {
        return surplus.stream().mapToInt(Surplus::count).sum();
    }

    /**
     * One line of the bill.
     *
     * @param box what is ordered
     * @param quantity how many of it
     * @param covers which parts for which holes
     * @param price of one
     * @param leadDays 0 when on the shelf, else the days until it is there
     */
    public record Line(Box box, int quantity, List<Need> covers, Money price, int leadDays) {

        /** Copies what it covers. */
        public Line {
            covers = List.copyOf(covers);
        }

        /** Price × quantity. */
        public Money total() {
            return price.times(quantity);
        }
    }

    /**
     * Parts left over.
     *
     * @param number of the part
     * @param count how many are left over
     */
    public record Surplus(PartNumber number, int count) {}

    /**
     * A need that cannot be covered.
     *
     * @param part the part
     * @param needed how many the kit needs
     * @param obtainable how many of them can be had, which is from the shelf: fewer than are needed
     * @param withdrawn what became of the number; empty where only no more of it can be had
     */
    public record Missing(Part part, int needed, int obtainable, Optional<Withdrawal.State> withdrawn) {

        /** What is short, such as {@code piston P-050 (needed 2, on the shelf 1)}. */
        public String says() {
            boolean onShelf = obtainable > 0 || withdrawn.isEmpty();
            return part.kind().label() + " " + part.number().text() + " (needed " + needed
                    + (onShelf ? ", on the shelf " + obtainable : "")
                    + withdrawn.map(state -> ", " + state.label()).orElse("") + ")";
        }
    }
}
