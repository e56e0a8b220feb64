package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoreSurfaceTest {

    @ParameterizedTest
    @CsvSource({"IRON, iron", "CHROME, chrome", "NICKEL, nickel", "SILICON, silicon"})
    void isTypedAndShownInTheWordOfTheTrade(BoreSurface surface, String label) {
        assertThat(surface.label()).isEqualTo(label);
    }
}
