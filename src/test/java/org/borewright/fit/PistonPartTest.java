package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PistonPartTest {

    @ParameterizedTest(name = "made for {0}, asked for {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            DESIGN-1, +0.50, any hole   | DESIGN-1, +0.50, any hole  | IN
            DESIGN-1, +0.25, any hole   | DESIGN-1, +0.50, any hole  | OUT
            DESIGN-2, +0.50, any hole   | DESIGN-1, +0.50, any hole  | OUT
            DESIGN-1, +0.50, right hole | DESIGN-1, +0.50, left hole | OUT
            """)
    void aPistonIsForThePlaceItIsMadeForAndNoOther(String madeFor, String asked, Outcome outcome) {
        assertThat(PistonPart.check("piston 2", madeFor, asked))
                .isEqualTo(new Suitability(Rule.PISTON_PART, "piston 2", madeFor, asked, outcome == Outcome.IN))
                .extracting(Check::outcome)
                .isEqualTo(outcome);
    }
}
