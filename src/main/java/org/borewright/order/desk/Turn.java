package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.borewright.order.Errand;
import org.borewright.order.Move;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.State;
import org.borewright.order.journal.Deed;
import org.borewright.order.store.BlockRow;
import org.borewright.order.store.JournalHead;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.ReservationRow;

/**
 * Takes hold of an order, asks whether it may be moved, and moves it with a line in the journal. Locks are taken in one order everywhere:
 * orders by number, numbers of the shelf sorted, block and barrels by their tags, journal.
 */
@ApplicationScoped
class Turn {

    /**
     * How a move is told.
     *
     * @param by who made it
     * @param was what stood before in its place: notes, what was put aside; empty where the line says nothing of it
     * @param says what came of it; empty likewise
     * @param movesStock whether other parts can be had from the shelf than before
     * @param wrote whether papers, quotes or holes were written with it
     */
    record Done(String by, String was, String says, boolean movesStock, boolean wrote) {

        /** Nothing was written, and nothing stood in its place. */
        Done(String by, String says, boolean movesStock) {
            this(by, "", says, movesStock, false);
        }

        /** Something was written with it. */
        static Done writing(String by, String says) {
            return new Done(by, "", says, false, true);
        }

        /** In place of something. */
        Done insteadOf(String stood) {
            return new Done(by, stood, says, movesStock, wrote);
        }
    }

    private final Clock clock;

    Turn(Clock clock) {
        this.clock = clock;
    }

    Instant now() {
        return clock.instant();
    }

    /** The order, held. @throws RefusedException likewise, or if the move is not allowed */
    OrderRow take(Errand errand, Move move) {
        return allowing(move, take(errand));
    }

    /** The order, held. @throws RefusedException if there is none, or it was changed meanwhile */
    OrderRow take(Errand errand) {
        return asKnown(errand, OrderRow.held(errand.order()));
    }

    /** The order as it stands, not held: whoever takes it asks again. @throws RefusedException as when it is taken */
    OrderRow see(Errand errand) {
        return asKnown(errand, OrderRow.findByIdOptional(errand.order()));
    }

    /** The same, whatever was changed meanwhile. @throws RefusedException if there is none */
    OrderRow see(long order) {
        return found(order, OrderRow.findByIdOptional(order));
    }

    /** The same order. @throws RefusedException if the move is not allowed */
    static OrderRow allowing(Move move, OrderRow order) {
        if (order.kind.after(order.state, move).isEmpty()) {
            throw new RefusedException(new Refusal.NotAllowed(
                    order.number, order.kind, order.state, move, ReservationRow.waits(order.number)));
        }
        return order;
    }

    private static OrderRow asKnown(Errand errand, Optional<OrderRow> found) {
        OrderRow order = found(errand.order(), found);
        if (order.version != errand.version()) {
            throw new RefusedException(new Refusal.Changed(order.number, errand.version(), order.version));
        }
        return order;
    }

    private static OrderRow found(long number, Optional<OrderRow> order) {
        return order.orElseThrow(() -> new RefusedException(new Refusal.UnknownOrder(number)));
    }

    /** Moves an order that was taken for it. */
    OrderRow move(OrderRow order, Move move, Done done) {
        State next = order.kind.after(order.state, move).orElseThrow();
        return note(order, next, move.label(), done);
    }

    /** Writes down what was done with an order that was taken, and where it stands now. */
    OrderRow note(OrderRow order, State next, String did, Done done) {
        String before = standing(order);
        boolean ends = order.state != next && order.kind.allowed(next).isEmpty();
        order.state = next;
        order.acceptedQuote = next.isAgreed() ? order.acceptedQuote : null;
        order.version++;
        if (ends) {
            order.tags().forEach(tag -> leaves(order, tag));
        }
        line(order, did, before, done);
        return order;
    }

    /** A block or barrel is free with the end of its order; one that another order has by then stays with that. */
    private static void leaves(OrderRow order, String tag) {
        BlockRow.held(tag).filter(row -> order.number.equals(row.openOrder)).ifPresent(row -> row.openOrder = null);
    }

    /**
     * Writes the line of an order that has just come to stand as it does.
     *
     * @param before how it stood; empty where it was just noted
     */
    void line(OrderRow order, String did, String before, Done done) {
        OrderRow.flush();
        write(new Deed(
                done.by(),
                "order " + order.number,
                Optional.of(order.number),
                did,
                saying(before, done.was()),
                saying(standing(order), done.says()),
                done.movesStock(),
                Optional.of(order.matter(done.wrote()))));
    }

    private static String saying(String standing, String says) {
        return says.isEmpty() ? standing : standing + ": " + says;
    }

    /** Writes a line. It holds the head of the journal, and nothing that others may hold is taken after it. */
    void write(Deed deed) {
        JournalHead.add(now(), deed);
    }

    static String standing(OrderRow order) {
        return String.format(Locale.ROOT, "%s, version %d", order.state.label(), order.version);
    }
}
