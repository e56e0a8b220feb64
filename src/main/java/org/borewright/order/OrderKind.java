package org.borewright.order;

import static org.borewright.order.Move.ACCEPT;
import static org.borewright.order.Move.CONFIRM;
import static org.borewright.order.Move.DECLINE;
import static org.borewright.order.Move.DID_NOT_CLEAN_UP;
import static org.borewright.order.Move.FINISH;
import static org.borewright.order.Move.QUOTE;
import static org.borewright.order.Move.RELEASE;
import static org.borewright.order.Move.RUN_OUT;
import static org.borewright.order.Move.SURVEY;
import static org.borewright.order.Move.WITHDRAW;
import static org.borewright.order.State.ACCEPTED;
import static org.borewright.order.State.CONFIRMED;
import static org.borewright.order.State.DECLINED;
import static org.borewright.order.State.FINISHED;
import static org.borewright.order.State.QUOTED;
import static org.borewright.order.State.RECEIVED;
import static org.borewright.order.State.RELEASED;
import static org.borewright.order.State.SURVEYED;
import static org.borewright.order.State.WITHDRAWN;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is ordered, and the moves that lead from state to state. */
public enum OrderKind {
    /** Machining and parts: the block comes to the shop. */
    REBUILD(
            "rebuild",
            new Step(ACCEPTED, CONFIRM, CONFIRMED),
            new Step(ACCEPTED, DID_NOT_CLEAN_UP, SURVEYED),
            new Step(ACCEPTED, WITHDRAW, WITHDRAWN),
            new Step(ACCEPTED, RUN_OUT, QUOTED),
            new Step(CONFIRMED, CONFIRM, CONFIRMED),
            new Step(CONFIRMED, DID_NOT_CLEAN_UP, SURVEYED),
            new Step(CONFIRMED, FINISH, FINISHED),
            new Step(CONFIRMED, WITHDRAW, WITHDRAWN),
            new Step(FINISHED, DID_NOT_CLEAN_UP, SURVEYED),
            new Step(FINISHED, RELEASE, RELEASED)),
    /** Parts for holes that are machined elsewhere: nothing of it is done on the bench. */
    PARTS_ALONE(
            "parts alone",
            new Step(ACCEPTED, RELEASE, RELEASED),
            new Step(ACCEPTED, WITHDRAW, WITHDRAWN),
            new Step(ACCEPTED, RUN_OUT, QUOTED));

    /** Until the customer has said yes every order goes the same way. */
    private static final List<Step> UP_TO_THE_YES = List.of(
            new Step(RECEIVED, SURVEY, SURVEYED),
            new Step(RECEIVED, WITHDRAW, WITHDRAWN),
            new Step(SURVEYED, SURVEY, SURVEYED),
            new Step(SURVEYED, QUOTE, QUOTED),
            new Step(SURVEYED, WITHDRAW, WITHDRAWN),
            new Step(QUOTED, SURVEY, SURVEYED),
            new Step(QUOTED, QUOTE, QUOTED),
            new Step(QUOTED, ACCEPT, ACCEPTED),
            new Step(QUOTED, DECLINE, DECLINED),
            new Step(QUOTED, WITHDRAW, WITHDRAWN));

    /** The moves that need every part of the order. */
    private static final List<Move> WITH_ALL_PARTS = List.of(CONFIRM, RELEASE);

    /** One move from one state to the next. */
    private record Step(State from, Move move, State to) {}

    private final String label;

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed, but its type does not say so
    private final List<Step> afterTheYes;

    OrderKind(String label, Step... afterTheYes) {
        this.label = label;
        this.afterTheYes = List.of(afterTheYes);
    }

    /** The words as typed and shown. */
    public String label() {
        return label;
    }

    private Stream<Step> steps() {
        return Stream.concat(UP_TO_THE_YES.stream(), afterTheYes.stream());
    }

    /** Where a move leads from a state; empty where it is not allowed. */
    public Optional<State> after(State state, Move move) {
        return steps().filter(step -> step.from == state && step.move == move)
                .map(Step::to)
                .findFirst();
    }

    /** The moves allowed from a state, in the order of an order's life; none where it has ended. */
    public List<Move> allowed(State state) {
        return steps().filter(step -> step.from == state)
                .map(Step::move)
                .sorted()
                .toList();
    }

    /** Those of them that somebody can make as things stand: time alone makes no choice, and while parts are to come some must wait. */
    public List<Move> next(State state, boolean partsToCome) {
        return allowed(state).stream()
                .filter(move -> move != RUN_OUT)
                .filter(move -> !(partsToCome && WITH_ALL_PARTS.contains(move)))
                .toList();
    }

    /** The states from which a move is allowed, in the order of an order's life. */
    public List<State> before(Move move) {
        return steps().filter(step -> step.move == move)
                .map(Step::from)
                .sorted()
                .toList();
    }
}
