package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.fit.shape.MassRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassSpreadTest {

    /** Pistons of one engine within 2 g: TM 10-3930-653-14&P. The lightest against the heaviest of another hole, in milligrams. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            ONE FROM, TO,     OTHER FROM, TO,     OUTCOME
            250000,   252000, 250000,     252000, IN
            250000,   251999, 250000,     251999, IN
            250000,   252001, 250000,     252000, OUT
            249999,   252000, 250000,     252000, OUT
            250000,   251000, 251000,     252000, IN
            250000,   251000, 251000,     252001, OUT
            251000,   252001, 250000,     251000, OUT
            250000,   250000, 250000,     250000, IN
            250000,   252001, 251000,     251000, IN
            249000,   253000, 251000,     251000, IN
            249000,   253001, 251000,     251000, OUT
            248999,   253000, 251000,     251000, OUT
            """)
    void theWorstSpreadOfASetIsJudged(long from, long to, long otherFrom, long otherTo, Outcome outcome) {
        Check check = MassSpread.check(List.of(new MassRange(from, to), new MassRange(otherFrom, otherTo)), 2_000);
        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.rule()).isEqualTo(Rule.MASS_SPREAD);
    }

    @ParameterizedTest
    @CsvSource({"1, NOT_CHECKED", "2, OUT", "6, OUT"})
    void aSingleHasNothingToDifferFrom(int pistons, Outcome outcome) {
        List<MassRange> alike = Collections.nCopies(pistons, new MassRange(250_000, 260_000));
        assertThat(MassSpread.check(alike, 2_000).outcome()).isEqualTo(outcome);
    }

    @ParameterizedTest
    @CsvSource({"250000, 252000, 251000, 253500, 3500"})
    void theOrderOfTheHolesDoesNotMatter(long from, long to, long otherFrom, long otherTo, long spread) {
        MassRange one = new MassRange(from, to);
        MassRange other = new MassRange(otherFrom, otherTo);
        assertThat(Stream.of(List.of(one, other), List.of(other, one))
                        .map(set -> (Comparison) MassSpread.check(set, 2_000)))
                .allSatisfy(check -> assertThat(check.value()).isEqualTo(new Amount(spread, Quantity.MASS)));
    }
}
