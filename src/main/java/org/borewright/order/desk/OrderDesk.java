package org.borewright.order.desk;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Stream;
import org.borewright.order.BlockKind;
import org.borewright.order.Errand;
import org.borewright.order.HoleRecord;
import org.borewright.order.Move;
import org.borewright.order.OrderKind;
import org.borewright.order.PistonsSold;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.State;
import org.borewright.order.desk.Turn.Done;
import org.borewright.order.store.BlockRow;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.PaperRow;
import org.borewright.order.store.QuotePartRow;
import org.borewright.order.store.QuoteRow;

/**
 * What the sales desk does with an order, each in one transaction. Who may put something back takes the order with {@link StockRoom}, which
 * holds those that get it too, and gives it on last: the locks of {@link Turn} are then all taken, and the lines follow that of the move.
 */
@ApplicationScoped
@Transactional
public class OrderDesk {

    /**
     * What an order begins with.
     *
     * @param kind rebuild or parts alone
     * @param customer how the shop knows them
     * @param engine its code
     * @param block its tag; empty for parts alone
     * @param barrels each with its tag; none where they are not told apart
     * @param notes anything
     * @param by who notes it
     */
    public record Opening(
            OrderKind kind,
            String customer,
            String engine,
            Optional<String> block,
            List<Barrel> barrels,
            String notes,
            String by) {

        /**
         * A barrel.
         *
         * @param cylinder it sits at
         * @param tag the shop's tag on it
         * @param pointer to the tag in the question (RFC 6901)
         */
        public record Barrel(String cylinder, String tag, String pointer) {}

        /** Copies the barrels. */
        public Opening {
            barrels = List.copyOf(barrels);
        }
    }

    /**
     * A quote that is to be given.
     *
     * @param validUntil the last day it holds
     * @param says what it offers, in a few words
     * @param size of its pistons; empty where those in the engine stay
     * @param sold the pistons in its boxes, likewise
     * @param ringSets the ring sets in them
     * @param parts it needs from the shelf
     * @param document all of it
     */
    public record Offer(
            LocalDate validUntil,
            String says,
            Optional<String> size,
            Optional<PistonsSold> sold,
            SortedSet<String> ringSets,
            List<Part> parts,
            String document) {

        /** How many of a number, and the days they take; 0 where they lie on the shelf. */
        public record Part(String number, int quantity, int leadDays) {}
    }

    private static final String THE_CLOCK = "the clock";

    private final Turn turn;
    private final Papers papers;
    private final Reservations reservations;
    private final StockRoom room;
    private final Clock clock;

    OrderDesk(Turn turn, Papers papers, Reservations reservations, StockRoom room, Clock clock) {
        this.turn = turn;
        this.papers = papers;
        this.reservations = reservations;
        this.room = room;
        this.clock = clock;
    }

    /** The day it is in the shop. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /**
     * Looks whether something could be done with an order before all that was sent for it is read. Nothing is held by it, and who does it asks
     * again.
     *
     * @param move that is to be made; empty where it stays in its state
     * @throws RefusedException if there is no such order, it was changed meanwhile, or the move is not allowed
     */
    public void see(Errand errand, Optional<Move> move) {
        OrderRow order = turn.see(errand);
        move.ifPresent(wanted -> Turn.allowing(wanted, order));
    }

    /** Refuses a move of an order as it stands. @throws RefusedException if there is no such order, or the move is not allowed */
    public void see(long order, Move move) {
        Turn.allowing(move, turn.see(order));
    }

    /** Notes a new order. @throws RefusedException if the block or a barrel cannot be taken in */
    public OrderRow receive(Opening opening) {
        Map<String, BlockRow> tagged = free(opening);
        OrderRow order = new OrderRow();
        order.version = 1;
        order.kind = opening.kind();
        order.state = State.RECEIVED;
        order.customer = opening.customer();
        order.engine = opening.engine();
        order.block = opening.block().map(tag -> kept(tag, tagged)).orElse(null);
        opening.barrels().forEach(barrel -> order.barrels.put(barrel.cylinder(), kept(barrel.tag(), tagged)));
        order.notes = opening.notes();
        order.openedAt = turn.now();
        order.openedOn = today();
        order.persistAndFlush();
        tagged.values().forEach(row -> row.openOrder = order.number);
        turn.line(order, "receive", "", new Done(opening.by(), says(order), false));
        return order;
    }

    /** A tag as it was first written. */
    private static String kept(String told, Map<String, BlockRow> tagged) {
        return Objects.requireNonNull(tagged.get(told), "a tag that was not held").tag;
    }

    private static String says(OrderRow order) {
        return order.kind.label() + ", engine " + order.engine + (order.block == null ? "" : ", block " + order.block)
                + (order.barrels.isEmpty()
                        ? ""
                        : ", barrels " + String.join(", ", order.barrelsInTurn().values()));
    }

    /** What bears the tags of an order that is to be noted, held and free, by its tag as it was told. */
    private static Map<String, BlockRow> free(Opening opening) {
        Map<String, Opening.Barrel> barrels = new HashMap<>();
        opening.barrels().forEach(barrel -> barrels.put(barrel.tag(), barrel));
        Map<String, BlockRow> free = new HashMap<>();
        Stream.concat(barrels.keySet().stream(), opening.block().stream())
                .sorted(BlockRow.IN_TURN)
                .forEach(tag -> {
                    Opening.Barrel barrel = barrels.get(tag);
                    free.put(
                            tag,
                            barrel == null
                                    ? free("/block", BlockKind.BLOCK, tag, opening.engine())
                                    : free(barrel.pointer(), BlockKind.BARREL, tag, opening.engine()));
                });
        return free;
    }

    private static BlockRow free(String pointer, BlockKind kind, String tag, String engine) {
        BlockRow bearer = BlockRow.held(tag).orElseGet(() -> BlockRow.tagged(tag, kind, engine));
        Optional<Refusal.Taken> why = Optional.empty();
        if (bearer.kind != kind) {
            why = Optional.of(new Refusal.Taken.OfItsKind());
        } else if (!bearer.engine.equals(engine)) {
            why = Optional.of(new Refusal.Taken.OfEngine(bearer.engine));
        } else if (bearer.openOrder != null) {
            why = Optional.of(new Refusal.Taken.InTheShop(bearer.openOrder));
        }
        why.ifPresent(taken -> {
            throw new RefusedException(new Refusal.BlockTaken(pointer, bearer.kind, bearer.tag, taken));
        });
        return bearer;
    }

    /** Keeps a survey and its answer. */
    public OrderRow survey(Errand errand, Paper survey, List<HoleRecord> holes) {
        return surveyed(turn.take(errand, Move.SURVEY), errand, Move.SURVEY, survey, holes);
    }

    /**
     * Keeps the survey of holes that did not clean up, or of which something hidden came to light. What lies aside stays so for a while, since
     * the next quote may want some of it; what has not come is no longer waited for.
     */
    public OrderRow didNotCleanUp(Errand errand, Paper survey, List<HoleRecord> holes) {
        OrderRow order = turn.take(errand, Move.DID_NOT_CLEAN_UP);
        order.heldUntil = reservations.waitNoLonger(order.number) ? reservations.fromNow() : null;
        order.quoteGivenUp = order.acceptedQuote;
        return surveyed(order, errand, Move.DID_NOT_CLEAN_UP, survey, holes);
    }

    private OrderRow surveyed(OrderRow order, Errand errand, Move move, Paper survey, List<HoleRecord> holes) {
        papers.keep(order, PaperRow.Kind.SURVEY, survey, errand.by());
        papers.found(order, move, holes, errand.by());
        return turn.move(order, move, Done.writing(errand.by(), survey.says()));
    }

    /** Keeps a quote beside those given before. */
    public QuoteRow quote(Errand errand, Offer offer) {
        OrderRow order = turn.take(errand, Move.QUOTE);
        QuoteRow quote = new QuoteRow();
        quote.orderNumber = order.number;
        quote.orderVersion = order.version + 1;
        quote.number = QuoteRow.of(order.number).size() + 1;
        quote.at = turn.now();
        quote.by = errand.by();
        quote.survey = PaperRow.last(order.number, PaperRow.Kind.SURVEY).orElseThrow().id;
        quote.validUntil = offer.validUntil();
        quote.says = offer.says();
        quote.size = offer.size().orElse(null);
        offer.sold().ifPresent(quote::keep);
        quote.ringSets.addAll(offer.ringSets());
        quote.document = offer.document();
        quote.persistAndFlush();
        for (Offer.Part part : offer.parts()) {
            QuotePartRow row = new QuotePartRow();
            row.quote = quote.id;
            row.number = part.number();
            row.quantity = part.quantity();
            row.leadDays = part.leadDays();
            row.persist();
        }
        turn.move(order, Move.QUOTE, Done.writing(errand.by(), "quote " + quote.number + ", " + offer.says()));
        return quote;
    }

    /**
     * The customer's yes: puts aside all that the quote needs, in place of what is put aside for the order already.
     *
     * @param mayWait whether the customer waits for what can be had but is not there
     */
    public OrderRow accept(Errand errand, int number, boolean mayWait) {
        Set<Long> line = room.holdWithThoseBehind(errand.order());
        OrderRow order = turn.take(errand, Move.ACCEPT);
        QuoteRow quote = acceptable(order, number);
        Set<String> free = reservations.put(order.number, QuotePartRow.of(quote.id), mayWait);
        order.acceptedQuote = number;
        order.heldUntil = reservations.heldUntil(order.number).orElse(null);
        OrderRow.flush();
        String says = "quote " + number + ", put aside: " + Reservations.says(order.number);
        turn.move(order, Move.ACCEPT, new Done(errand.by(), says, true));
        room.giveOn(line, free, errand.by(), putBackBy(order));
        return order;
    }

    private QuoteRow acceptable(OrderRow order, int number) {
        QuoteRow quote = QuoteRow.of(order.number, number)
                .orElseThrow(() -> new RefusedException(new Refusal.UnknownQuote(
                        order.number, number, QuoteRow.of(order.number).size())));
        if (quote.survey != PaperRow.last(order.number, PaperRow.Kind.SURVEY).orElseThrow().id) {
            throw new RefusedException(new Refusal.QuoteOfOlderSurvey(order.number, number));
        }
        if (today().isAfter(quote.validUntil)) {
            throw new RefusedException(new Refusal.QuoteRanOut(order.number, number, quote.validUntil));
        }
        return quote;
    }

    /** The customer's no: what is put aside goes back. */
    public OrderRow decline(Errand errand, String reason) {
        return ended(errand, Move.DECLINE, reason);
    }

    /** Calls an order off, likewise. */
    public OrderRow withdraw(Errand errand, String reason) {
        return ended(errand, Move.WITHDRAW, reason);
    }

    private OrderRow ended(Errand errand, Move move, String reason) {
        Set<Long> line = room.holdWithThoseBehind(errand.order());
        OrderRow order = turn.take(errand, move);
        String aside = Reservations.says(order.number);
        Set<String> free = reservations.putBack(order.number);
        order.heldUntil = null;
        turn.move(order, move, new Done(errand.by(), reason, !free.isEmpty()).insteadOf(aside));
        room.giveOn(line, free, errand.by(), putBackBy(order));
        return order;
    }

    private static String putBackBy(OrderRow order) {
        return "put back by order " + order.number;
    }

    /** The block leaves, and what was put aside with it. @throws RefusedException if some of it has not come yet */
    public OrderRow release(Errand errand) {
        OrderRow order = turn.take(errand, Move.RELEASE);
        String says = "handed out: " + Reservations.says(order.number);
        reservations.handOut(order.number);
        order.heldUntil = null;
        return turn.move(order, Move.RELEASE, new Done(errand.by(), says, true));
    }

    /** Writes other notes on an order, wherever it stands; the journal keeps those before. */
    public OrderRow write(Errand errand, String notes) {
        OrderRow order = turn.take(errand);
        String before = order.notes;
        order.notes = notes;
        return turn.note(order, order.state, "write notes", new Done(errand.by(), notes, false).insteadOf(before));
    }

    /** Puts back what was put aside too long. @return whether it was still so when the order was held */
    public boolean runOut(long number, Instant now) {
        Set<Long> line = room.holdWithThoseBehind(number);
        Optional<OrderRow> found =
                OrderRow.held(number).filter(order -> order.heldUntil != null && !order.heldUntil.isAfter(now));
        found.ifPresent(order -> {
            String says = "put back: " + Reservations.says(number);
            Set<String> free = reservations.putBack(number);
            order.heldUntil = null;
            State next = order.kind.after(order.state, Move.RUN_OUT).orElse(order.state);
            turn.note(order, next, Move.RUN_OUT.label(), new Done(THE_CLOCK, says, !free.isEmpty()));
            room.giveOn(line, free, THE_CLOCK, putBackBy(order));
        });
        return found.isPresent();
    }
}
