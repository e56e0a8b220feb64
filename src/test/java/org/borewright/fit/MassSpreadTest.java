package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.fit.shape.MassRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassSpreadTest {

    /** Pistons of one engine within 2 g: TM 10-3930-653-14&P. The lightest of any kind against the heaviest of any, in milligrams. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            ONE FROM, TO,     OTHER FROM, TO,     OUTCOME
            250000,   252000, 250000,     252000, IN
            250000,   252001, 250000,     252000, OUT
            249999,   252000, 250000,     252000, OUT
            250000,   251000, 251000,     252000, IN
            250000,   251000, 251000,     252001, OUT
            251000,   252001, 250000,     251000, OUT
            250000,   250000, 250000,     250000, IN
            """)
    void theWorstSpreadOfASetIsJudged(long from, long to, long otherFrom, long otherTo, Outcome outcome) {
        Check check = MassSpread.check(List.of(new MassRange(from, to), new MassRange(otherFrom, otherTo)), 2, 2_000);
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.rule()).isEqualTo(Rule.MASS_SPREAD);
    }

    @ParameterizedTest
    @CsvSource({"1, NOT_CHECKED", "2, OUT", "6, OUT"})
    void aSingleHasNothingToDifferFrom(int pistons, Outcome outcome) {
        assertThat(MassSpread.check(List.of(new MassRange(250_000, 260_000)), pistons, 2_000)
                        .outcome())
                .isEqualTo(outcome);
    }

    @ParameterizedTest
    @CsvSource({"250000, 252000, 251000, 253500, 3500"})
    void theOrderOfTheKindsDoesNotMatter(long from, long to, long otherFrom, long otherTo, long spread) {
        MassRange one = new MassRange(from, to);
        MassRange other = new MassRange(otherFrom, otherTo);
        assertThat(Stream.of(List.of(one, other), List.of(other, one))
                        .map(kinds -> (Comparison) MassSpread.check(kinds, 2, 2_000)))
                .allSatisfy(check -> assertThat(check.value()).isEqualTo(new Amount(spread, Quantity.MASS)));
    }
}
