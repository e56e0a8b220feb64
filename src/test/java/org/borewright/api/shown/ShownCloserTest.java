package org.borewright.api.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.borewright.fit.Check;
import org.borewright.fit.Clearance;
import org.borewright.fit.CloserReading.Better;
import org.borewright.fit.CloserReading.What;
import org.borewright.fit.ServiceClearance;
import org.borewright.fit.ServiceWear;
import org.borewright.fit.WallLeft;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.WallShape;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.Wall;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownCloserTest {

    /** 2540 nm are 0.0001 in. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            CALIBRATION       | false | MILLIMETRE | measure again with a gauge whose expanded uncertainty is at most 0.00254 mm, all else as it was
            CALIBRATION       | true  | INCH       | measure again, all at 20 °C and so stated, with a gauge whose expanded uncertainty is at most 0.0001 in, all else as it was
            BOTH_CALIBRATIONS | false | MILLIMETRE | measure hole and piston again with gauges of which the root of the sum of the squares of both expanded uncertainties is at most 0.00254 mm, all else as it was
            WHOLE_GAUGE       | false | MILLIMETRE | measure again with a gauge of which the root of the sum of the squares of half its expanded uncertainty, its resolution/√12 and its repeatability is at most 0.00254 mm
            BOTH_WHOLE_GAUGES | true  | MILLIMETRE | measure hole and piston again, all at 20 °C and so stated, with gauges of which the root of the sum of the squares of half of both expanded uncertainties, both resolutions/√12 and both repeatabilities is at most 0.00254 mm
            STEP_AND_SCATTER  | false | MILLIMETRE | measure again with a gauge of which the root of the sum of the squares of its resolution/√12 and its repeatability is at most 0.00254 mm
            """)
    void theGaugeIsSaidWithItsFigure(What what, boolean allAt20, LengthUnit unit, String says) {
        assertThat(ShownCloser.of(new Better(what, allAt20, Length.ofNanometres(2540)), unit))
                .isEqualTo(says);
    }

    /** 1 K alone is worth 0.0016 mm. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.001 | the value lies nearer to the limit than the temperature can tell, even at 20 °C and so stated, and no gauge settles it: move off the limit
            0     | the value lies on the limit and no gauge settles it: move off the limit
            """)
    void whereNoGaugeSettlesItThatIsSaid(Length margin, String says) {
        Uncertainty reading = new Uncertainty(2500, 289, 0, 806, 0, 0, 806);
        Length hole = Length.parseMillimetres("53.732");
        assertThat(next(ServiceWear.check(hole, reading, hole.plus(margin), Length.ZERO)))
                .isEqualTo(says);
    }

    /** 0.003 of the 0.004 that are left: the piston's own U of 0.001 stays. */
    @ParameterizedTest
    @CsvSource({"0.001, measure the hole again with a gauge whose", "0, measure again with a gauge whose"})
    void ofAClearanceItIsTheHoleThatIsReadBetter(Length ofPiston, String says) {
        Length hole = Length.parseMillimetres("70");
        Uncertainty read = new Uncertainty(2500, 289, 0, 0, 0, 0, 0);
        Uncertainty beside = ofPiston.equals(Length.ZERO) ? Uncertainty.NONE : new Uncertainty(500, 0, 0, 0, 0, 0, 0);
        Length wear = Length.parseMillimetres("0.104");

        assertThat(next(ServiceClearance.check(hole, read, hole.minus(Length.parseMillimetres("0.100")), beside, wear)))
                .startsWith(says);
    }

    @Test
    void aPistonThatWasNotMeasuredMovesAClearanceOffItsLimit() {
        Length hole = Length.parseMillimetres("70");
        Limits piston = Limits.exactly(Length.parseMillimetres("69.970"));
        ClearanceWindow window = new ClearanceWindow(
                Length.parseMillimetres("0.030"), Length.parseMillimetres("0.040"), Length.parseMillimetres("0.060"));
        Uncertainty reading = Uncertainty.ofCalibration(Length.ofMicrometres(5));
        assertThat(next(Clearance.check(Limits.exactly(hole), reading, piston, Uncertainty.NONE, window)
                        .get(0)))
                .endsWith("no gauge settles it: measure the piston, or move off the limit");
        assertThat(next(ServiceClearance.check(
                        hole, reading, piston.least(), reading, Length.parseMillimetres("0.030"))))
                .endsWith("no gauge settles it: move off the limit");
    }

    /** Nobody is asked with what a wall was measured, so that no gauge named would be heeded. */
    @Test
    void aWallIsKnownNoBetterThanItIs() {
        Length least = Length.parseMillimetres("1.5");
        WallShape made = new WallShape(
                Optional.empty(), Optional.of(least), Optional.empty(), Optional.empty(), Optional.empty());
        Wall found = new Wall(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(least), false);
        Length hole = Length.parseMillimetres("70");
        assertThat(next(WallLeft.check(made, found, hole, hole, Length.ZERO).orElseThrow()))
                .isEqualTo("it is known no better than that: take a smaller size, or fit a new sleeve");
    }

    private static @Nullable String next(Check check) {
        return ShownCheck.of(check, LengthUnit.MILLIMETRE).next();
    }
}
