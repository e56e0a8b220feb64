package org.borewright.fit;

import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;

/** Figures true of the trade without a single source: each is a default that an engine's own data override. */
public final class CommonPractice {

    private CommonPractice() {}

    /** What the bar leaves for the hone, on the diameter: 0.05 mm. */
    public static Length honeStock() {
        return Length.ofMicrometres(50);
    }

    /** How far the bar's axis may miss the original one: 0.02 mm. */
    public static Length centringError() {
        return Length.ofMicrometres(20);
    }

    /** What a hone takes beyond the largest reading to leave no uncut patch, on the diameter: 0.005 mm. */
    public static Length honeCleanUp() {
        return Length.ofMicrometres(5);
    }

    /** How far a gasket opening stands back from the hole: 0.5 mm all round. */
    public static Length gasketMargin() {
        return Length.ofMicrometres(500);
    }

    /** The largest oversize for road use: 1.00 mm for engines with metric steps, 0.040 in with inch steps; inclusive. */
    public static Length largestOversize(LengthUnit steps) {
        return switch (steps) {
            case MILLIMETRE -> Length.ofMicrometres(1_000);
            case INCH -> Length.ofMicrometres(1_016);
        };
    }

    /** What a reading with feeler blades under a straight edge is worth, U with k = 2: 0.010 mm, for the blades step so. */
    public static Length feelerUncertainty() {
        return Length.ofMicrometres(10);
    }

    /** Expanded uncertainty of a wall measured from outside, with an ultrasonic gauge: 0.05 mm. */
    public static Length wallUncertainty() {
        return Length.ofMicrometres(50);
    }

    /** How far from 20 °C a room that people work in may be: 15 K. */
    public static int roomWithinKelvins() {
        return 15;
    }

    /** Taper and out-of-round allowed in a freshly honed hole: 0.010 mm each. */
    public static Length finishedShape() {
        return Length.ofMicrometres(10);
    }

    /** How far below its tolerance a piston may read before it was measured across the pin, or at the wrong height: 0.05 mm. */
    public static Length pistonReadAmiss() {
        return Length.ofMicrometres(50);
    }

    /** How much tighter than the smallest hole of its size a hole may once have been finished: 0.02 mm. */
    public static Length finishedTighter() {
        return Length.ofMicrometres(20);
    }

    /** How far below the smallest new bore a reading is still believed: 0.10 mm. */
    public static Length believedBelow() {
        return Length.ofMicrometres(100);
    }

    /**
     * How far a reading may lie beyond all readings beside it before it is queried, on the diameter: 0.15 mm, three times what an engine may
     * commonly be out of round. Tenths and hundredths exchanged are 0.09 mm for each step between the two digits, so from two steps on.
     */
    public static Length farFromNeighbours() {
        return Length.ofMicrometres(150);
    }

    /** From what difference of thrust and pin on a row clearly tells which is wider: 0.02 mm, twice what a finished hole may be out of round. */
    public static Length clearlyOval() {
        return Length.ofMicrometres(20);
    }

    /** How far above the largest allowed finish a reading is still believed: 0.50 mm. */
    public static Length believedAbove() {
        return Length.ofMicrometres(500);
    }
}
