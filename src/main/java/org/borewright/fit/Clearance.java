package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

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

    /** Both clearances of a measured hole against the window. */
    public static List<Comparison> check(Limits hole, Length uncertainty, PistonShape piston) {
        Limits clearance = of(hole, piston);
        Limits window = piston.clearance().limits();
        return List.of(
                Rule.CLEARANCE_LEAST
                        .atLeast("", clearance.least(), window.least())
                        .within(uncertainty),
                Rule.CLEARANCE_GREATEST
                        .atMost("", clearance.greatest(), window.greatest())
                        .within(uncertainty));
    }
}
