package org.borewright.api.shown;

import org.borewright.fit.CloserReading;
import org.borewright.fit.CloserReading.Better;
import org.borewright.fit.CloserReading.NoGauge;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Uncertainty;

/** What would settle a close call, in words. */
public final class ShownCloser {

    private static final String AGAIN = "measure again";

    private ShownCloser() {}

    /** With the figure in a unit; of a clearance, where one gauge does, the hole's, for that is reckoned. */
    static String of(Comparison close, CloserReading closer, LengthUnit unit) {
        String alone = close.readings().beside().equals(Uncertainty.NONE) ? AGAIN : "measure the hole again";
        return closer instanceof Better better ? of(better, alone, unit) : of(close, (NoGauge) closer);
    }

    /** Of one length, with the figure in a unit. */
    public static String of(Better better, LengthUnit unit) {
        return of(better, AGAIN, unit);
    }

    private static String of(Better better, String alone, LengthUnit unit) {
        return (better.what().isOfTwo() ? "measure hole and piston again" : alone)
                + (better.allAt20() ? ", all at 20 °C and so stated, " : " ")
                + switch (better.what()) {
                    case CALIBRATION -> "with a gauge whose expanded uncertainty is ";
                    case BOTH_CALIBRATIONS ->
                        "with gauges of which the root of the sum of the squares of both expanded uncertainties is ";
                    case WHOLE_GAUGE ->
                        "with a gauge of which the root of the sum of the squares of half its expanded uncertainty, its resolution/√12"
                                + " and its repeatability is ";
                    case BOTH_WHOLE_GAUGES ->
                        "with gauges of which the root of the sum of the squares of half of both expanded uncertainties, both"
                                + " resolutions/√12 and both repeatabilities is ";
                    case STEP_AND_SCATTER ->
                        "with a gauge of which the root of the sum of the squares of its resolution/√12 and its repeatability is ";
                }
                + "at most " + ShownLength.of(better.atMost(), unit, Flattery.UPPER_LIMIT) + " " + unit.symbol()
                + switch (better.what()) {
                    case CALIBRATION, BOTH_CALIBRATIONS -> ", all else as it was";
                    case WHOLE_GAUGE, BOTH_WHOLE_GAUGES, STEP_AND_SCATTER -> "";
                };
    }

    private static String of(Comparison close, NoGauge why) {
        return switch (why) {
            case ON_THE_LIMIT -> "the value lies on the limit and no gauge settles it: " + moveOff(close);
            case TEMPERATURE ->
                "the value lies nearer to the limit than the temperature can tell, even at 20 °C and so stated, and no gauge settles it: "
                        + moveOff(close);
            case GIVEN -> "it is known no better than that: " + close.rule().wayOut();
        };
    }

    private static String moveOff(Comparison close) {
        if (close.rule() == Rule.PISTON_LEAST || close.rule() == Rule.PISTON_GREATEST) {
            return "take another piston";
        }
        return takesPistonsAsMade(close) ? "measure the piston, or move off the limit" : "move off the limit";
    }

    /** Whether it is a clearance of pistons anywhere in their tolerance: a reading of the piston moves it off the limit. */
    private static boolean takesPistonsAsMade(Comparison close) {
        return (close.rule() == Rule.CLEARANCE_LEAST || close.rule() == Rule.CLEARANCE_GREATEST)
                && close.readings().beside().equals(Uncertainty.NONE);
    }
}
