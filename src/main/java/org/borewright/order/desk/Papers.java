package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.function.Function;
import org.borewright.measure.Length;
import org.borewright.order.HoleRecord;
import org.borewright.order.Move;
import org.borewright.order.store.HoleLifeRow;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.PaperRow;

/** Keeps what was asked and answered of an order, and what it tells of the life of each hole. */
@ApplicationScoped
class Papers {

    private final Turn turn;

    Papers(Turn turn) {
        this.turn = turn;
    }

    PaperRow keep(OrderRow order, PaperRow.Kind kind, Paper paper, String by) {
        PaperRow row = new PaperRow();
        row.orderNumber = order.number;
        row.orderVersion = order.version + 1;
        row.kind = kind;
        row.at = turn.now();
        row.by = by;
        row.says = paper.says();
        row.request = paper.request();
        row.answer = paper.answer();
        row.persistAndFlush();
        return row;
    }

    /**
     * Holes as they were found, by a survey or because they did not clean up. Where the pistons are confirmed the bar may have been in some of
     * them: where those are told with what it reached, it was in none of the others.
     */
    void found(OrderRow order, Move move, List<HoleRecord> holes, String by) {
        boolean boredAreTold = order.state.isConfirmed() && holes.stream().anyMatch(HoleRecord::finishTold);
        live(
                order,
                hole -> move == Move.SURVEY || (boredAreTold && !hole.finishTold())
                        ? HoleLifeRow.What.SURVEYED
                        : HoleLifeRow.What.DID_NOT_CLEAN_UP,
                holes,
                by);
    }

    /** Holes as they were signed, each with its piston or as it is. */
    void signed(OrderRow order, HoleLifeRow.What how, List<HoleRecord> holes, String by) {
        live(order, hole -> how, holes, by);
    }

    /** Parts alone have no block, and no life is kept of it. */
    private void live(OrderRow order, Function<HoleRecord, HoleLifeRow.What> what, List<HoleRecord> holes, String by) {
        if (order.block == null) {
            return;
        }
        for (HoleRecord hole : holes) {
            HoleLifeRow row = new HoleLifeRow();
            row.block = order.block;
            row.cylinder = hole.cylinder();
            row.barrel = order.barrels.get(hole.cylinder());
            row.orderNumber = order.number;
            row.orderVersion = order.version + 1;
            row.at = turn.now();
            row.by = by;
            row.what = what.apply(hole);
            row.size = hole.size().orElse(null);
            row.smallest = hole.smallest().map(Length::nanometres).orElse(null);
            row.largest = hole.largest().map(Length::nanometres).orElse(null);
            hole.left().ifPresent(left -> {
                row.leftByMetal = left.byMetal();
                row.leftByPistons = left.byPistons();
            });
            row.says = Paper.shortened(hole.says());
            row.persist();
        }
    }
}
