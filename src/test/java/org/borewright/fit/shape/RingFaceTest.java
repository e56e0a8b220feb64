package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingFaceTest {

    @ParameterizedTest
    @CsvSource({"PLAIN, plain", "CHROME, chrome", "NITRIDED, nitrided", "MOLYBDENUM, molybdenum"})
    void isTypedAndShownInTheWordOfTheTrade(RingFace face, String label) {
        assertThat(face.label()).isEqualTo(label);
    }
}
