package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.worth;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProbedWallTest {

    /** A hole of 70.100 read with U 0.005: its farthest wall stands 35.050 off the axis at the least, known to 0.005. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            35.055000, IN
            35.054999, TOO_CLOSE
            35.050000, TOO_CLOSE
            35.045001, TOO_CLOSE
            35.045000, OUT
            34.000000, OUT
            """)
    void noWallLiesNearerTheAxisThanHalfTheDiameter(Length radius, Outcome outcome) {
        Comparison check = ProbedWall.check(radius, mm("70.100"), worth(mm("0.005")));

        assertThat(check.outcome()).isEqualTo(outcome);
        assertThat(check.rule()).isEqualTo(Rule.PROBED_WALL);
    }

    /** Geometry: a round hole whose centre lies off the axis reaches farther on one side by just as much. */
    @Property
    boolean aRoundHoleOffTheAxisNeverContradicts(
            @ForAll @LongRange(min = 40_000_000, max = 200_000_000) long diameter,
            @ForAll @LongRange(min = 0, max = 2_000_000) long off) {
        Length hole = Length.ofNanometres(diameter);
        Length radius = hole.halfRoundedUp().plus(Length.ofNanometres(off));

        return ProbedWall.check(radius, hole, worth(mm("0.005"))).outcome() != Outcome.OUT;
    }
}
