package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;

import java.math.BigDecimal;
import org.borewright.fit.CloserReading.Better;
import org.borewright.fit.CloserReading.NoGauge;
import org.borewright.fit.CloserReading.What;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.Temperature.Scale;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.BoreShape.Form;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CloserReadingTest {

    private static final Expansion SLEEVE = new Expansion(15e-6, 3e-6);

    /**
     * 53.732 mm, (15 ± 3) × 10⁻⁶ /K: 2u of 1 K is 1.612 µm, of 5/√3 K 4.653, of 6 K of the growth 1.934, of the step 0.577 (JCGM 100). Of a
     * margin of 3 µm there are left for the gauge √(9 − 2.598 − 0.333) = 2.463, 6 K off √(6.068 − 3.742) = 1.525; of 1.65 µm for gauge,
     * step and scatter √(2.7225 − 2.5985)/2 = 0.176.
     */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            MARGIN,    CELSIUS, WHAT,        AT 20, FIGURE
            0.003,     20,      CALIBRATION, false, 0.002463
            -0.003,    20,      CALIBRATION, false, 0.002463
            0.003,     26,      CALIBRATION, false, 0.001525
            0.003,     ,        CALIBRATION, true,  0.002463
            0.002,     26,      CALIBRATION, true,  0.001033
            0.00165,   20,      WHOLE_GAUGE, false, 0.000176
            0.00165,   26,      WHOLE_GAUGE, true,  0.000176
            """)
    void theGaugeIsWhatTheRestLeavesOfTheMargin(
            Length margin, BigDecimal celsius, What what, boolean allAt20, Length figure) {
        assertThat(wear(margin, celsius).closer()).contains(new Better(what, allAt20, figure));
    }

    @ParameterizedTest
    @CsvSource({"0.0016, TEMPERATURE", "-0.0016, TEMPERATURE", "0.000001, TEMPERATURE", "0, ON_THE_LIMIT"})
    void whereEvenAPerfectGaugeTellsNothingNoneIsNamed(Length margin, NoGauge why) {
        assertThat(wear(margin, BigDecimal.valueOf(20)).closer()).contains(why);
        assertThat(wear(margin, null).closer()).contains(why);
    }

    private static Comparison wear(Length margin, BigDecimal celsius) {
        Climate climate = celsius == null ? Climate.NOT_STATED : Climate.at(Temperature.parse(celsius, Scale.CELSIUS));
        Length largest = mm("53.732");
        Uncertainty reading = Uncertainty.of(largest, Gauge.Kind.BORE_GAUGE.usual(), climate, SLEEVE);
        return ServiceWear.check(largest, reading, largest.plus(margin), Length.ZERO);
    }

    /** 0.008 against 0.010: 0.002/(2·√2) = 0.000 707, and nothing but step and scatter is in it. */
    @ParameterizedTest
    @CsvSource({"0.008, 0.000707", "0.012, 0.000707", "0.009990, 0.000003", "0.009998,"})
    void ofADifferenceStepAndScatterAreNamed(Length taper, Length figure) {
        Uncertainty coarse = new Uncertainty(2500, 2887, 1000, 2021, 0, 0, 700);
        Comparison check = FinishedShape.check(
                        new BoreShape(taper, taper, Length.ZERO, Form.BELL_MOUTH),
                        coarse,
                        CommonPractice.finishedShape())
                .get(0);
        assertThat(check.closer())
                .contains(figure == null ? NoGauge.ON_THE_LIMIT : new Better(What.STEP_AND_SCATTER, false, figure));
    }

    /** Nobody asks with what a wall was measured: no figure would be heeded. */
    @Test
    void whatIsTakenForGivenNamesNoGauge() {
        Comparison wall = Rule.WALL_LEFT.atLeast("", mm("1.52"), mm("1.50")).within(CommonPractice.wallUncertainty());
        assertThat(wall.closer()).contains(NoGauge.GIVEN);
    }

    /** 3, 4, 5: beside a piston worth 4 a hole worth 3 settles what lies 5 off its limit; beside one worth more, both must be better. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            MARGIN, PISTON, WHAT,              FIGURE
            5000,   4000,   CALIBRATION,       3000
            -5000,  4000,   CALIBRATION,       3000
            12999,  5000,   CALIBRATION,       11998
            4000,   4000,   BOTH_CALIBRATIONS, 3998
            3999,   4000,   BOTH_CALIBRATIONS, 3997
            """)
    void aDifferenceOfTwoLengthsIsSettledByTheHoleOrByBoth(long margin, long piston, What what, long figure) {
        assertThat(apart(margin, piston).closer()).contains(new Better(what, false, nm(figure)));
    }

    @Test
    void onTheLimitBetweenHoleAndPistonNoGaugeIsNamed() {
        assertThat(apart(0, 4000).closer()).contains(NoGauge.ON_THE_LIMIT);
    }

    @ParameterizedTest
    @CsvSource({"5000", "-5000"})
    void whatIsSettledNeedsNothing(long margin) {
        assertThat(apart(margin, 0).within(Shapes.worth(nm(5000))).closer()).isEmpty();
    }

    private static Comparison apart(long margin, long piston) {
        return Rule.CLEARANCE_LEAST
                .atLeast("", nm(margin), Length.ZERO)
                .within(Shapes.worth(nm(12_000)), Shapes.worth(nm(piston)));
    }
}
