package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import org.borewright.order.Errand;
import org.borewright.order.HoleRecord;
import org.borewright.order.Move;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.PaperRow;
import org.borewright.order.store.QuoteRow;

/** What the machinist does with an order, each in one transaction. */
@ApplicationScoped
@Transactional
public class OrderBench {

    /**
     * What the bench says of pistons before honing, or of holes after it.
     *
     * @param engine it was asked about
     * @param size it was asked about; empty where the pistons in the engine stay
     * @param verdict in a word or two
     * @param good whether the work may go on
     * @param holds what stands in the way, one sentence each
     * @param paper question and answer
     */
    public record Verdict(
            String engine, Optional<String> size, String verdict, boolean good, List<String> holds, Paper paper) {}

    private static final String THAT_OF_NOW = "that of now";

    private final Turn turn;
    private final Papers papers;
    private final Reservations reservations;

    OrderBench(Turn turn, Papers papers, Reservations reservations) {
        this.turn = turn;
        this.papers = papers;
        this.reservations = reservations;
    }

    /**
     * Confirms the pistons: boring may start, and what is put aside no longer runs out.
     *
     * @throws RefusedException unless all parts are there, and the bench is ready for every hole at the size accepted
     */
    public OrderRow confirm(Errand errand, Verdict bench) {
        OrderRow order = turn.take(errand, Move.CONFIRM);
        needSameJob(order, bench);
        reservations.needAllHere(order.number);
        if (!bench.good()) {
            throw new RefusedException(new Refusal.BenchHolds(order.number, bench.verdict(), bench.holds()));
        }
        papers.keep(order, PaperRow.Kind.BENCH, bench.paper(), errand.by());
        order.heldUntil = null;
        return turn.move(
                order, Move.CONFIRM, new Turn.Done(errand.by(), bench.paper().says(), false));
    }

    /**
     * Judges the honed holes. A pass is signed, and the life of each hole goes on from it; anything else goes back to the bench with the
     * reason, and the order stays where it is.
     */
    public OrderRow finish(Errand errand, Verdict judged, List<HoleRecord> holes) {
        OrderRow order = turn.take(errand, Move.FINISH);
        needSameJob(order, judged);
        papers.keep(order, PaperRow.Kind.FINISH, judged.paper(), errand.by());
        if (!judged.good()) {
            return turn.note(
                    order,
                    order.state,
                    "judge",
                    new Turn.Done(errand.by(), judged.paper().says(), false));
        }
        papers.signed(order, holes, errand.by());
        return turn.move(
                order, Move.FINISH, new Turn.Done(errand.by(), judged.paper().says(), false));
    }

    /** Whether the quote accepted leaves the pistons where they are, so that there are none to confirm. */
    public boolean isRingsOnly(Errand errand) {
        return OrderRow.<OrderRow>findByIdOptional(errand.order())
                .flatMap(OrderBench::accepted)
                .filter(quote -> quote.size == null)
                .isPresent();
    }

    private static Optional<QuoteRow> accepted(OrderRow order) {
        return Optional.ofNullable(order.acceptedQuote).flatMap(number -> QuoteRow.of(order.number, number));
    }

    private static void needSameJob(OrderRow order, Verdict asked) {
        if (!order.engine.equals(asked.engine())) {
            throw new RefusedException(new Refusal.OfAnother(order.number, "engine", asked.engine(), order.engine));
        }
        Optional<String> size = accepted(order).map(quote -> quote.size);
        if (!size.equals(asked.size())) {
            throw new RefusedException(new Refusal.OfAnother(
                    order.number, "size", asked.size().orElse(THAT_OF_NOW), size.orElse(THAT_OF_NOW)));
        }
    }
}
