package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;

import java.util.Optional;
import org.borewright.fit.shape.HeadShape;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrownInMouthTest {

    @ParameterizedTest
    @CsvSource({"71.000, 71.000, IN", "71.000, 71.000001, OUT", "71.000, 70.999999, IN"})
    void theLargestCrownGoesIntoTheMouth(Length mouth, Length piston, Outcome outcome) {
        assertThat(CrownInMouth.check(head(Optional.of(mouth)), piston)).hasValueSatisfying(check -> {
            assertThat(check.outcome()).isEqualTo(outcome);
            assertThat(check.rule()).isEqualTo(Rule.CROWN_IN_MOUTH);
        });
    }

    @ParameterizedTest
    @CsvSource({"60.000", "99.000"})
    void whereTheCrownCannotReachNothingIsAsked(Length piston) {
        assertThat(CrownInMouth.check(head(Optional.empty()), piston)).isEmpty();
    }

    private static HeadShape head(Optional<Length> mouth) {
        return new HeadShape(20, false, mouth, mm("75.000"), 10_500_000);
    }
}
