package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CertaintyTest {

    @ParameterizedTest
    @CsvSource({
        "CERTAIN, CERTAIN, CERTAIN",
        "CERTAIN, POSSIBLE, POSSIBLE",
        "CERTAIN, NO, NO",
        "POSSIBLE, POSSIBLE, POSSIBLE",
        "POSSIBLE, NO, NO",
        "NO, NO, NO"
    })
    void theLessCertainOfTwoHolesStands(Certainty one, Certainty other, Certainty both) {
        assertThat(one.and(other)).isEqualTo(both);
        assertThat(other.and(one)).isEqualTo(both);
    }

    @ParameterizedTest
    @CsvSource({"CERTAIN, certain", "POSSIBLE, possible", "NO, no"})
    void isShownAsTheTradeSaysIt(Certainty certainty, String label) {
        assertThat(certainty.label()).isEqualTo(label);
    }
}
