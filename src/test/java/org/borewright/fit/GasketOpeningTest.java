package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;

import java.util.List;
import org.borewright.fit.shape.GasketShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasketOpeningTest {

    @ParameterizedTest
    @CsvSource({"70.580, 0.500, 71.580", "70.580, 0, 70.580", "70.580001, 0.000001, 70.580003"})
    void theOpeningStandsBackByTheMarginAllRound(Length largestFinish, Length margin, Length needed) {
        assertThat(GasketOpening.needed(largestFinish, margin)).isEqualTo(needed);
    }

    /** Largest finish 70.580 and a margin of 0.500 need 71.580; the land ends at 75.000. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SMALLEST,  LARGEST,   OPENING, LAND
            71.580,    75.000,    IN,      IN
            71.579999, 75.000,    OUT,     IN
            71.580,    75.000001, IN,      OUT
            71.580001, 74.999999, IN,      IN
            """)
    void openingAndLandAreInclusive(Length smallest, Length largest, Outcome opening, Outcome land) {
        GasketShape gasket = Deck.gasket(new Limits(smallest, largest), limits("1.0", "1.1"), limits("0", "0"));
        List<Comparison> checks = GasketOpening.check(gasket, Shapes.mm("70.580"), Deck.head(true));
        assertThat(checks).extracting(Comparison::rule).containsExactly(Rule.GASKET_OPENING, Rule.GASKET_LAND);
        assertThat(checks).extracting(Comparison::outcome).containsExactly(opening, land);
    }
}
