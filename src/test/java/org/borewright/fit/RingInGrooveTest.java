package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.limits;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.RingFace;
import org.borewright.fit.shape.RingSection;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingInGrooveTest {

    private static final Limits GAP = limits("0.200", "0.400");

    /**
     * Limits of the play from the manuals: 0.063 to 0.102 and 0.069 to 0.107 mm, TM 5-1940-277-34, p. 3-25; 0.040 to 0.073, 0.030 to
     * 0.063 and 0.03 to 0.08, TM 10-3930-653-14&P, 4-2-4-7. The widths are made to meet and to miss them by a nanometre.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            GROOVE,            RING,              AT LEAST, AT MOST, LEAST, GREATEST
            2.063 2.080,       1.978 2.000,       0.063,    0.102,   IN,    IN
            2.063001 2.079999, 1.978 2.000,       0.063,    0.102,   IN,    IN
            2.062999 2.080,    1.978 2.000,       0.063,    0.102,   OUT,   IN
            2.063 2.080001,    1.978 2.000,       0.063,    0.102,   IN,    OUT
            2.063 2.080,       1.978 2.000001,    0.063,    0.102,   OUT,   IN
            2.063 2.080,       1.977999 2.000,    0.063,    0.102,   IN,    OUT
            2.070 2.090,       1.983 2.001,       0.069,    0.107,   IN,    IN
            1.240 1.253,       1.180 1.200,       0.040,    0.073,   IN,    IN
            1.239999 1.253,    1.180 1.200,       0.040,    0.073,   OUT,   IN
            1.230 1.243,       1.180 1.200,       0.030,    0.063,   IN,    IN
            2.530 2.550,       2.470 2.500,       0.030,    0.080,   IN,    IN
            2.530 2.550,       2.469999 2.500,    0.030,    0.080,   IN,    OUT
            """)
    void thePlayIsGrooveLessRingWorstCaseBothWays(
            String groove, String ring, String atLeast, String atMost, Outcome least, Outcome greatest) {
        List<Check> checks = RingInGroove.check(
                ring(RingSection.RECTANGULAR, range(ring), limits("2.900", "3.000")),
                groove(RingSection.RECTANGULAR, range(groove), limits(atLeast, atMost), Length.ZERO),
                mm("70.000"));
        assertThat(checks)
                .extracting(Check::rule)
                .containsExactly(Rule.RING_SECTION, Rule.RING_PLAY_LEAST, Rule.RING_PLAY_GREATEST, Rule.RING_BACK);
        assertThat(checks.subList(1, 3)).extracting(Check::outcome).containsExactly(least, greatest);
        assertThat(checks).extracting(Check::place).containsOnly("top");
    }

    /** Root 63.000 to 63.100, wall 2.900 to 3.100: (70.000 − 63.100)/2 − 3.100 = 0.350. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SMALLEST HOLE, BEHIND,    AT LEAST, OUTCOME
            70.000,        0.350,     0.350,    IN
            70.000,        0.350,     0.350001, OUT
            70.000001,     0.350,     0.350,    IN
            70.000002,     0.350001,  0.350001, IN
            69.999999,     0.349999,  0.350,    OUT
            69.300,        0.000,     0,        IN
            69.298,        -0.001,    0,        OUT
            """)
    void theRoomBehindIsHalvedDown(Length hole, Length behind, Length atLeast, Outcome outcome) {
        RingShape ring = ring(RingSection.RECTANGULAR, limits("1.170", "1.190"), limits("2.900", "3.100"));
        GrooveShape groove =
                groove(RingSection.RECTANGULAR, limits("1.220", "1.240"), limits("0.020", "0.080"), atLeast);
        assertThat(RingInGroove.behind(ring, groove, hole)).isEqualTo(behind);
        assertThat(RingInGroove.check(ring, groove, hole).get(3).outcome()).isEqualTo(outcome);
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            RING,        GROOVE,      SECTION, CHECKS, PLAY
            RECTANGULAR, RECTANGULAR, IN,      4,      IN
            KEYSTONE,    KEYSTONE,    IN,      2,      NOT_CHECKED
            KEYSTONE,    RECTANGULAR, OUT,     2,      NOT_CHECKED
            RECTANGULAR, KEYSTONE,    OUT,     2,      NOT_CHECKED
            """)
    void aShapedRingFitsByItsPartOnly(
            RingSection ringSection, RingSection grooveSection, Outcome section, int count, Outcome play) {
        List<Check> checks = RingInGroove.check(
                ring(ringSection, limits("1.170", "1.190"), limits("2.900", "3.100")),
                groove(grooveSection, limits("1.220", "1.240"), limits("0.020", "0.080"), Length.ZERO),
                mm("70.000"));
        assertThat(checks).hasSize(count);
        assertThat(checks.get(0).outcome()).isEqualTo(section);
        assertThat(checks.get(1).outcome()).isEqualTo(play);
    }

    @Property
    boolean theRoomBehindIsNeverShownLargerThanItIs(@ForAll @LongRange(min = 69_000_000, max = 71_000_000) long hole) {
        RingShape ring = ring(RingSection.RECTANGULAR, limits("1.170", "1.190"), limits("2.900", "3.100"));
        GrooveShape groove =
                groove(RingSection.RECTANGULAR, limits("1.220", "1.240"), limits("0.020", "0.080"), Length.ZERO);
        long twice = 2 * RingInGroove.behind(ring, groove, nm(hole)).nanometres();
        long exact = hole - 63_100_000 - 2 * 3_100_000;
        return twice <= exact && twice >= exact - 1;
    }

    private static RingShape ring(RingSection section, Limits axialWidth, Limits radialWall) {
        return new RingShape("top", section, axialWidth, radialWall, GAP, mm("70.000"), Length.ZERO, RingFace.PLAIN);
    }

    private static GrooveShape groove(RingSection section, Limits width, Limits play, Length back) {
        return new GrooveShape("top", section, width, limits("63.000", "63.100"), GAP, play, back);
    }

    private static Limits range(String text) {
        int gap = text.indexOf(' ');
        return limits(text.substring(0, gap), text.substring(gap + 1).strip());
    }
}
