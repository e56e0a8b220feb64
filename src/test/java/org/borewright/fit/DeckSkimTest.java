package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeckSkimTest {

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SKIM,     GREATEST, OUTCOME, MARGIN
            0.300,    0.300,    IN,      0
            0.300001, 0.300,    OUT,     -1
            0.299999, 0.300,    IN,      1
            0,        0,        IN,      0
            """)
    void theGreatestSkimIsInclusive(Length skim, Length greatest, Outcome outcome, long margin) {
        Comparison check = DeckSkim.check("GK-1", skim, greatest);

        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.margin()).isEqualTo(margin);
        assertThat(check.place()).isEqualTo("GK-1");
        assertThat(DeckSkim.ofEngine(skim, greatest).outcome()).isEqualTo(outcome);
    }
}
