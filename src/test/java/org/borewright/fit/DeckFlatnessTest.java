package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeckFlatnessTest {

    /** Source: ISO 14253-1 decides from U on; U is 0.010 mm where none is stated (common practice). */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FOUND,    STATED,   LIMIT, OUTCOME
            0.040,    ,         0.050, IN
            0.040001, ,         0.050, TOO_CLOSE
            0.050,    ,         0.050, TOO_CLOSE
            0.059999, ,         0.050, TOO_CLOSE
            0.060,    ,         0.050, OUT
            0.045,    0.005,    0.050, IN
            0.045001, 0.005,    0.050, TOO_CLOSE
            0.054999, 0.005,    0.050, TOO_CLOSE
            0.055,    0.005,    0.050, OUT
            0,        ,         0.010, IN
            0,        0.010001, 0.010, TOO_CLOSE
            """)
    void isJudgedAsAReadingIs(Length found, Length stated, Length limit, Outcome outcome) {
        assertThat(new DeckFlatness(found, Optional.ofNullable(stated))
                        .check(limit)
                        .outcome())
                .isEqualTo(outcome);
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FOUND, STATED, SKIM,     OUTCOME, MARGIN
            0.080, ,       0.090,    IN,      0
            0.080, ,       0.089999, OUT,     -1
            0.080, 0.005,  0.085,    IN,      0
            0.080, 0.005,  0.084999, OUT,     -1
            0.080, 0.005,  0.085001, IN,      1
            """)
    void aSkimTakesWhatWasFoundAndItsUncertaintyAtTheLeast(
            Length found, Length stated, Length skim, Outcome outcome, long margin) {
        Comparison check = new DeckFlatness(found, Optional.ofNullable(stated)).checkSkim(skim);

        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.margin()).isEqualTo(margin);
    }
}
