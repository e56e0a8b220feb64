package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.borewright.order.Difference;
import org.borewright.order.Errand;
import org.borewright.order.HoleRecord;
import org.borewright.order.Move;
import org.borewright.order.OrderHold;
import org.borewright.order.PistonsFitted;
import org.borewright.order.PistonsSold;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.store.HoleLifeRow;
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
     * @param fitted the pistons that go in; empty where those in the engine stay
     * @param verdict in a word or two
     * @param good whether the work may go on
     * @param holds what stands in the way
     * @param paper question and answer
     */
    public record Verdict(
            String engine,
            Optional<PistonsFitted> fitted,
            String verdict,
            boolean good,
            List<OrderHold> holds,
            Paper paper) {

        /** Copies the holds. */
        public Verdict {
            holds = List.copyOf(holds);
        }

        /** All of it in the words of the journal: what holds with the way out, and where the whole of it is kept. */
        private String says(PaperRow kept) {
            String why = holds.stream()
                    .map(hold -> (paper.says().endsWith(hold.says()) ? " " : " " + hold.says() + " ") + hold.next())
                    .collect(Collectors.joining());
            String all = paper.says() + why;
            return (all.length() <= LONGEST ? all : all.substring(0, LONGEST) + "…") + " Paper " + kept.id + ".";
        }
    }

    /**
     * An order after the bench was asked.
     *
     * @param order as it stands now
     * @param verdict of the bench
     * @param paper the number that question and answer are kept under
     */
    public record Benched(OrderRow order, Verdict verdict, long paper) {}

    private static final int LONGEST = 3_500;

    private final Turn turn;
    private final Papers papers;
    private final Reservations reservations;

    OrderBench(Turn turn, Papers papers, Reservations reservations) {
        this.turn = turn;
        this.papers = papers;
        this.reservations = reservations;
    }

    /**
     * Confirms the pistons: boring may start, and what is put aside no longer runs out. Where they are confirmed already it is done anew, as
     * when one was dropped, and the pairing of now is the one that counts.
     *
     * @throws RefusedException unless all parts are there, the pistons are those sold, and the bench is ready for every hole
     */
    public Benched confirm(Errand errand, Verdict bench) {
        OrderRow order = turn.take(errand, Move.CONFIRM);
        needJob(order, bench, fitted -> sold(order).from(fitted));
        reservations.needAllHere(order.number);
        if (!bench.good()) {
            throw new RefusedException(new Refusal.BenchHolds(order.number, bench.verdict(), bench.holds()));
        }
        order.heldUntil = null;
        return judged(order, Move.CONFIRM, PaperRow.Kind.BENCH, bench, errand.by());
    }

    /**
     * Judges the honed holes. A pass is signed, and the life of each hole goes on from it; anything else goes back to the bench with the
     * reason, and the order stays where it is.
     *
     * @throws RefusedException unless the engine is built with the pistons confirmed, each in its own hole, and with rings that were sold
     */
    public Benched finish(Errand errand, Verdict judged, List<HoleRecord> holes) {
        OrderRow order = turn.take(errand, Move.FINISH);
        Optional<PistonsFitted> paired =
                PaperRow.last(order.number, PaperRow.Kind.BENCH).flatMap(PaperRow::fitted);
        needJob(order, judged, built -> {
            PistonsSold sold = sold(order);
            List<Difference> found =
                    new ArrayList<>(paired.map(pistons -> pistons.from(built)).orElseGet(() -> sold.from(built)));
            found.addAll(sold.inRings(built));
            return found;
        });
        if (judged.good()) {
            HoleLifeRow.What how =
                    judged.fitted().isPresent() ? HoleLifeRow.What.FINISHED : HoleLifeRow.What.RINGS_ONLY;
            papers.signed(order, how, holes, errand.by());
        }
        return judged(order, Move.FINISH, PaperRow.Kind.FINISH, judged, errand.by());
    }

    private Benched judged(OrderRow order, Move move, PaperRow.Kind kind, Verdict verdict, String by) {
        PaperRow kept = papers.keep(order, kind, verdict.paper(), by);
        verdict.fitted().ifPresent(kept::keep);
        Turn.Done done = Turn.Done.writing(by, verdict.says(kept));
        OrderRow now = verdict.good() ? turn.move(order, move, done) : turn.note(order, order.state, "judge", done);
        return new Benched(now, verdict, kept.id);
    }

    /** Whether the quote accepted leaves the pistons where they are, so that there are none to confirm. */
    public boolean isRingsOnly(long order) {
        return accepted(order).filter(quote -> quote.size == null).isPresent();
    }

    /** Whether the pistons of the quote accepted are the owner's own. */
    public boolean areOwnPistons(long order) {
        return accepted(order)
                .flatMap(QuoteRow::sold)
                .filter(PistonsSold::areOwn)
                .isPresent();
    }

    /** The quote accepted; empty where no yes stands. */
    public Optional<QuoteRow> accepted(long order) {
        return OrderRow.<OrderRow>findByIdOptional(order).flatMap(OrderBench::accepted);
    }

    private static Optional<QuoteRow> accepted(OrderRow order) {
        return Optional.ofNullable(order.acceptedQuote).flatMap(number -> QuoteRow.of(order.number, number));
    }

    private static PistonsSold sold(OrderRow order) {
        return accepted(order).flatMap(QuoteRow::sold).orElseThrow();
    }

    /** @param pistons where those that go in are not those of the order */
    private static void needJob(OrderRow order, Verdict asked, Function<PistonsFitted, List<Difference>> pistons) {
        List<Difference> found = new ArrayList<>();
        if (!order.engine.equals(asked.engine())) {
            found.add(Difference.ofEngine(asked.engine(), order.engine));
        }
        asked.fitted().map(pistons).ifPresent(found::addAll);
        if (!found.isEmpty()) {
            throw new RefusedException(new Refusal.OfAnother(order.number, found));
        }
    }
}
