package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.differing;
import static org.borewright.fit.Shapes.mm;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.Choke;
import org.borewright.fit.shape.HonedShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A choke of 0.010 to 0.030 mm; readings in thousandths over 70.000, three depths by thrust and pin, row by row. */
class ChokedShapeTest {

    private static final Choke CHOKE = new Choke(new Limits(mm("0.010"), mm("0.030")));

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            READINGS,           U,        LEAST,     GREATEST,  EVEN
            0 0 10 10 20 20,    0.0008,   IN,        IN,        IN
            0 0 5 5 10 10,      0,        IN,        IN,        IN
            0 0 5 5 10 9.999,   0,        OUT,       IN,        IN
            0 0 5 5 30 30.001,  0,        IN,        OUT,       IN
            0 0 5 5 10 20,      0.0008,   TOO_CLOSE, IN,        IN
            0 0 5 5 9.2 20,     0.0008,   OUT,       IN,        IN
            0 0 5 5 20 0,       0.0008,   OUT,       IN,        IN
            20 20 10 10 0 0,    0.0008,   OUT,       IN,        IN
            0 0 30 10 20 20,    0,        IN,        IN,        IN
            0 0 30.001 10 20 20, 0,       IN,        IN,        OUT
            0 0 -10.001 10 20 20, 0,      IN,        IN,        OUT
            0 0 0 0 0 0,        0.0008,   OUT,       IN,        IN
            """)
    void eachAxisHasTheChoke(String readings, Length uncertainty, Outcome least, Outcome greatest, Outcome even) {
        List<Check> checks = FinishedShape.check(
                grid(readings),
                uncertainty.equals(Length.ZERO) ? Uncertainty.NONE : differing(uncertainty),
                new HonedShape(Optional.of(CHOKE), CommonPractice.finishedShape()));

        assertThat(checks)
                .extracting(Check::rule)
                .containsExactly(Rule.CHOKE_LEAST, Rule.CHOKE_GREATEST, Rule.CHOKE_EVEN, Rule.FINISHED_OUT_OF_ROUND);
        assertThat(checks.subList(0, 3)).extracting(Check::outcome).containsExactly(least, greatest, even);
    }

    /** The allowance of 0.050 is over the window. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            READINGS,            BEYOND,   OUTCOME
            0 0 10 10 20 20,     0,        IN
            0 0 40 40 80 80,     0.050,    IN
            0 0 40 40 80 80.001, 0.050001, OUT
            40 40 20 20 0 0,     0.050,    IN
            40 40.001 20 20 0 0, 0.050001, OUT
            0 0 70.001 0 20 20,  0.050001, OUT
            """)
    void aHoleThatRunsOnMayLeaveItsChokeByTheAllowance(String readings, Length beyond, Outcome outcome) {
        Comparison taper = ServiceShape.checkChoked(grid(readings), CHOKE, Uncertainty.NONE, mm("0.050"), mm("0.100"))
                .get(0);

        assertThat(taper.value()).isEqualTo(Amount.of(beyond));
        assertThat(taper.rule()).isEqualTo(Rule.SERVICE_TAPER);
        assertThat(taper.outcome()).isEqualTo(outcome);
    }

    private static Grid grid(String thousandths) {
        return Grids.crosswise(Arrays.stream(thousandths.split(" ", -1))
                .map(text -> mm("70").plus(thousandths(text)))
                .toList());
    }

    private static Length thousandths(String text) {
        return Length.parseMillimetres(new BigDecimal(text).movePointLeft(3).toPlainString());
    }

    @Test
    void aChokeIsNotKnownFromOneDepth() {
        assertThat(FinishedShape.check(
                        Grids.grid("70.000 70.000"),
                        Uncertainty.NONE,
                        new HonedShape(Optional.of(CHOKE), CommonPractice.finishedShape())))
                .first()
                .extracting(Check::rule, Check::outcome)
                .containsExactly(Rule.CHOKE_LEAST, Outcome.UNKNOWN);
    }
}
