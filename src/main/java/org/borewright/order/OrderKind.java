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

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What is ordered, and the moves that lead from state to state. */
public enum OrderKind {
    /** Machining and parts: the block comes to the shop. */
    REBUILD(
            "rebuild",
            Map.of(
                    ACCEPTED,
                            Map.of(
                                    CONFIRM, CONFIRMED,
                                    DID_NOT_CLEAN_UP, SURVEYED,
                                    RUN_OUT, QUOTED,
                                    WITHDRAW, WITHDRAWN),
                    CONFIRMED, Map.of(FINISH, FINISHED, DID_NOT_CLEAN_UP, SURVEYED, WITHDRAW, WITHDRAWN),
                    FINISHED, Map.of(RELEASE, RELEASED, DID_NOT_CLEAN_UP, SURVEYED))),
    /** Parts for holes that are machined elsewhere: nothing of it is done on the bench. */
    PARTS_ALONE("parts alone", Map.of(ACCEPTED, Map.of(RELEASE, RELEASED, RUN_OUT, QUOTED, WITHDRAW, WITHDRAWN)));

    private final String label;

    @SuppressWarnings("ImmutableEnumChecker") // nothing changes it once it is made
    private final Map<State, Map<Move, State>> course;

    OrderKind(String label, Map<State, Map<Move, State>> afterTheYes) {
        this.label = label;
        this.course = new EnumMap<>(upToTheYes());
        course.putAll(afterTheYes);
    }

    /** Until the customer has said yes every order goes the same way. */
    private static Map<State, Map<Move, State>> upToTheYes() {
        return Map.of(
                RECEIVED, Map.of(SURVEY, SURVEYED, WITHDRAW, WITHDRAWN),
                SURVEYED, Map.of(SURVEY, SURVEYED, QUOTE, QUOTED, WITHDRAW, WITHDRAWN),
                QUOTED,
                        Map.of(
                                SURVEY, SURVEYED,
                                QUOTE, QUOTED,
                                ACCEPT, ACCEPTED,
                                DECLINE, DECLINED,
                                WITHDRAW, WITHDRAWN));
    }

    /** The words as typed and shown. */
    public String label() {
        return label;
    }

    /** Where a move leads from a state; empty where it is not allowed. */
    public Optional<State> after(State state, Move move) {
        return Optional.ofNullable(course.getOrDefault(state, Map.of()).get(move));
    }

    /** The moves allowed from a state, in the order of an order's life; none where it has ended. */
    public List<Move> allowed(State state) {
        return Stream.of(Move.values())
                .filter(move -> after(state, move).isPresent())
                .toList();
    }

    /** The states from which a move is allowed, likewise. */
    public List<State> before(Move move) {
        return Stream.of(State.values())
                .filter(state -> after(state, move).isPresent())
                .toList();
    }
}
