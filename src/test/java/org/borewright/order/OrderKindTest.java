package org.borewright.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** From where an order can be moved whereto: all of it, so that a move too many is noticed as well. */
class OrderKindTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "received  | survey > surveyed, withdraw > withdrawn",
                "surveyed  | survey > surveyed, quote > quoted, withdraw > withdrawn",
                "quoted    | survey > surveyed, quote > quoted, accept > accepted, decline > declined, withdraw > withdrawn",
                "accepted  | confirm > confirmed, did not clean up > surveyed, withdraw > withdrawn, run out > quoted",
                "confirmed | confirm > confirmed, did not clean up > surveyed, finish > finished, withdraw > withdrawn",
                "finished  | did not clean up > surveyed, release > released",
                "released  | ''",
                "declined  | ''",
                "withdrawn | ''",
            })
    void aRebuildGoesFromTheFirstCallToTheDayTheBlockLeaves(String state, String moves) {
        assertThat(course(OrderKind.REBUILD, state)).isEqualTo(moves);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "received  | survey > surveyed, withdraw > withdrawn",
                "surveyed  | survey > surveyed, quote > quoted, withdraw > withdrawn",
                "quoted    | survey > surveyed, quote > quoted, accept > accepted, decline > declined, withdraw > withdrawn",
                "accepted  | release > released, withdraw > withdrawn, run out > quoted",
                "confirmed | ''",
                "finished  | ''",
                "released  | ''",
                "declined  | ''",
                "withdrawn | ''",
            })
    void partsAloneKnowNoBench(String state, String moves) {
        assertThat(course(OrderKind.PARTS_ALONE, state)).isEqualTo(moves);
    }

    private static String course(OrderKind kind, String label) {
        State state = Stream.of(State.values())
                .filter(known -> known.label().equals(label))
                .findFirst()
                .orElseThrow();
        return kind.allowed(state).stream()
                .map(move -> move.label() + " > "
                        + kind.after(state, move).orElseThrow().label())
                .collect(Collectors.joining(", "));
    }

    /** Time makes no choice, and nobody confirms or hands out what is not there yet. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "REBUILD     | ACCEPTED | false | confirm, did not clean up, withdraw",
                "REBUILD     | ACCEPTED | true  | did not clean up, withdraw",
                "PARTS_ALONE | ACCEPTED | false | release, withdraw",
                "PARTS_ALONE | ACCEPTED | true  | withdraw",
                "REBUILD     | SURVEYED | true  | survey, quote, withdraw",
                "REBUILD     | RELEASED | false | ''",
            })
    void whatIsOfferedCanBeDone(OrderKind kind, State state, boolean partsToCome, String moves) {
        assertThat(kind.next(state, partsToCome).stream().map(Move::label).collect(Collectors.joining(", ")))
                .isEqualTo(moves);
    }

    @ParameterizedTest
    @CsvSource({
        "RECEIVED, false",
        "SURVEYED, false",
        "QUOTED, false",
        "ACCEPTED, true",
        "CONFIRMED, true",
        "FINISHED, true",
        "RELEASED, true",
        "DECLINED, false",
        "WITHDRAWN, false"
    })
    void aYesStandsFromAcceptedOnUntilTheOrderFallsBack(State state, boolean stands) {
        assertThat(state.isAgreed()).isEqualTo(stands);
    }

    /** Boring starts only when confirmed: nothing but the pistons checked leads to the hone and its judgement. */
    @Test
    void nothingIsFinishedThatWasNotConfirmed() {
        assertThat(OrderKind.REBUILD.before(Move.FINISH)).containsExactly(State.CONFIRMED);
        assertThat(OrderKind.REBUILD.before(Move.RELEASE)).containsExactly(State.FINISHED);
        assertThat(OrderKind.PARTS_ALONE.before(Move.CONFIRM)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(OrderKind.class)
    void whatHasEndedIsNeverMovedAgain(OrderKind kind) {
        assertThat(List.of(State.RELEASED, State.DECLINED, State.WITHDRAWN))
                .allSatisfy(ended -> assertThat(kind.allowed(ended)).isEmpty());
    }
}
