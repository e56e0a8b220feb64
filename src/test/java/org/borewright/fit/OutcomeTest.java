package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.measure.Decision;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutcomeTest {

    @ParameterizedTest
    @CsvSource({
        "IN, in, false",
        "OUT, out, true",
        "TOO_CLOSE, too close to call, true",
        "UNKNOWN, not known, true",
        "NOT_CHECKED, not checked, false"
    })
    void onlyWhatIsProvenOrDoesNotApplyLetsTheAnswerPass(Outcome outcome, String label, boolean holds) {
        assertThat(outcome.label()).isEqualTo(label);
        assertThat(outcome.holds()).isEqualTo(holds);
    }

    @ParameterizedTest
    @CsvSource({"IN, IN", "OUT, OUT", "TOO_CLOSE, TOO_CLOSE"})
    void aDecisionIsItsOutcome(Decision decision, Outcome outcome) {
        assertThat(Outcome.of(decision)).isEqualTo(outcome);
    }
}
