package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuitabilityTest {

    @ParameterizedTest
    @CsvSource({"true, IN", "false, OUT"})
    void whatCannotBeMeasuredEitherSuitsOrDoesNot(boolean suits, Outcome outcome) {
        assertThat(new Suitability(Rule.RING_FACE, "top", "plain on iron", "a face that suits iron", suits).outcome())
                .isEqualTo(outcome);
    }
}
