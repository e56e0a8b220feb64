package org.borewright.order;

import java.time.LocalDate;
import java.util.List;

/** Why something cannot be done with an order now. Nothing was changed. */
public sealed interface Refusal {

    /** There is no such order. */
    record UnknownOrder(long order) implements Refusal {}

    /**
     * The order has no such quote.
     *
     * @param last the last it has; 0 where it has none
     */
    record UnknownQuote(long order, int quote, int last) implements Refusal {}

    /**
     * Somebody changed the order meanwhile.
     *
     * @param now its version
     */
    record Changed(long order, int asked, int now) implements Refusal {}

    /**
     * The move is not allowed in this state.
     *
     * @param partsToCome whether parts of the order are still to come
     */
    record NotAllowed(long order, OrderKind kind, State state, Move move, boolean partsToCome) implements Refusal {}

    /** The quote holds no longer. */
    record QuoteRanOut(long order, int quote, LocalDate validUntil) implements Refusal {}

    /** The holes were surveyed anew since the quote was given. */
    record QuoteOfOlderSurvey(long order, int quote) implements Refusal {}

    /**
     * The shelf has too few, or more are still to come.
     *
     * @param mayWait whether the customer would wait for what can be had
     */
    record TooFew(long order, List<Lacking> lacking, boolean mayWait) implements Refusal {

        /** Copies the list. */
        public TooFew {
            lacking = List.copyOf(lacking);
        }
    }

    /** Parts put aside for the order are not all there yet. */
    record StillToCome(long order, List<Awaited> awaited) implements Refusal {

        /** Copies the list. */
        public StillToCome {
            awaited = List.copyOf(awaited);
        }
    }

    /** Others changed the same things at the same time, however often it was tried. */
    record Busy() implements Refusal {}

    /**
     * What bears a tag cannot be taken in.
     *
     * @param pointer to the tag in the question (RFC 6901)
     * @param kind of what bears it
     * @param tag as it was first written
     * @param why not
     */
    record BlockTaken(String pointer, BlockKind kind, String tag, Taken why) implements Refusal {}

    /** Why what bears a tag cannot be taken in. */
    sealed interface Taken {

        /** It is in the shop for an order that has not ended. */
        record InTheShop(long order) implements Taken {}

        /** It was tagged for another engine. */
        record OfEngine(String engine) implements Taken {}

        /** It is a barrel and no block, or the other way round. */
        record OfItsKind() implements Taken {}
    }

    /**
     * What was asked is about another job than the order.
     *
     * @param differences each of them, one at the least
     */
    record OfAnother(long order, List<Difference> differences) implements Refusal {

        /** Copies the list. */
        public OfAnother {
            differences = List.copyOf(differences);
        }
    }

    /**
     * The bench says no.
     *
     * @param holds why
     */
    record BenchHolds(long order, String readiness, List<OrderHold> holds) implements Refusal {

        /** Copies the list. */
        public BenchHolds {
            holds = List.copyOf(holds);
        }
    }
}
