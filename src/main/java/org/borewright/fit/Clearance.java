package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/**
 * Piston clearance at its worst: the smallest reading less the largest piston, and the largest reading less the smallest. Both
 * diameters at 20 °C (ISO 1); the limits are the piston maker's.
 */
public final class Clearance {

    private Clearance() {}

    /** The least and the greatest clearance of a piston in a hole. */
    public static Limits of(Limits hole, PistonShape piston) {
        return hole.minus(piston.diameter());
    }

    /** Both clearances of a measured hole against the window, the piston anywhere in its tolerance. */
    public static List<Comparison> check(Limits hole, Uncertainty uncertainty, PistonShape piston) {
        return check(hole, uncertainty, piston.diameter(), Uncertainty.NONE, piston.clearance());
    }

    /**
     * Both clearances of a measured hole against the window.
     *
     * @param piston as measured, or its tolerance
     * @param ofPiston of a measured piston; none for a tolerance
     */
    public static List<Comparison> check(
            Limits hole, Uncertainty ofHole, Limits piston, Uncertainty ofPiston, ClearanceWindow window) {
        Limits clearance = hole.minus(piston);
        return List.of(
                Rule.CLEARANCE_LEAST
                        .atLeast("", clearance.least(), window.least())
                        .within(ofHole, ofPiston),
                Rule.CLEARANCE_GREATEST
                        .atMost("", clearance.greatest(), window.greatest())
                        .within(ofHole, ofPiston));
    }
}
