package org.borewright.kit.bill;

import java.util.ArrayList;
import java.util.List;
import org.borewright.catalog.Build;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.Money;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.ShopOperation;
import org.borewright.catalog.Strokes;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;

/**
 * The operations of the shop that a rebuild needs, in the order they are done.
 *
 * @param lines each operation and how often
 */
public record ShopWork(List<Line> lines) {

    /**
     * One operation.
     *
     * @param operation what is done
     * @param quantity on how many holes, or 1 for the engine
     */
    public record Line(ShopOperation operation, int quantity) {

        /** Price × quantity. */
        public Money total() {
            return operation.price().times(quantity);
        }
    }

    /** The operations for holes that are to be bored, honed or left, and a deck to be skimmed by so much. */
    public static ShopWork of(Shelf shelf, List<HoleAtSize> holes, Length skim) {
        List<Line> lines = new ArrayList<>(shelf.operations().size());
        for (ShopOperation operation : shelf.operations()) {
            int quantity = quantity(shelf, operation, holes, skim);
            if (quantity > 0) {
                lines.add(new Line(operation, quantity));
            }
        }
        return new ShopWork(lines);
    }

    /** The days all of it takes. */
    public int days() {
        return lines.stream().mapToInt(line -> line.operation().days()).sum();
    }

    /** The fasteners that the operations touch. */
    List<Fastener> touched(List<Fastener> fasteners) {
        return fasteners.stream().filter(this::touches).toList();
    }

    /** Whether an operation touches a group of fasteners. */
    public boolean touches(Fastener fastener) {
        for (Line line : lines) {
            if (fastener.operations().contains(line.operation().code())) {
                return true;
            }
        }
        return false;
    }

    private static int quantity(Shelf shelf, ShopOperation operation, List<HoleAtSize> holes, Length skim) {
        Build build = shelf.engine().build();
        int cut = count(holes, Work.REBORE) + count(holes, Work.HONE_ONLY);
        int touched = switch (operation.when()) {
            case ALWAYS -> holes.size();
            case PLATE -> build.torquePlate() ? cut : 0;
            case BORE -> count(holes, Work.REBORE);
            case HONE -> cut;
            case PORTS -> build.strokes() == Strokes.TWO ? count(holes, Work.REBORE) : 0;
            case SKIM -> skim.isMoreThan(Length.ZERO) ? holes.size() : 0;
        };
        return operation.per() == ShopOperation.Per.ENGINE ? Math.min(touched, 1) : touched;
    }

    private static int count(List<HoleAtSize> holes, Work work) {
        int count = 0;
        for (HoleAtSize hole : holes) {
            count += hole.work() == work ? 1 : 0;
        }
        return count;
    }
}
