package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingSectionTest {

    @ParameterizedTest
    @CsvSource({"RECTANGULAR, rectangular", "KEYSTONE, keystone"})
    void isTypedAndShownInTheWordOfTheTrade(RingSection section, String label) {
        assertThat(section.label()).isEqualTo(label);
    }
}
