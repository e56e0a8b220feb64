package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * A piston belongs to the size it is listed under: the holes it may run in meet the new bore limits, moved by the oversize. Source:
 * geometry; catches a piston listed one step off, or in the wrong unit.
 */
public final class PistonSize {

    private PistonSize() {}

    /** The holes of a piston against the new bore limits at an oversize. */
    public static List<Comparison> check(PistonShape piston, Limits newBore, Length oversize) {
        Limits bore = newBore.plus(oversize);
        return List.of(
                Rule.PISTON_SIZE.atMost("smallest hole", piston.smallestFinish(), bore.greatest()),
                Rule.PISTON_SIZE.atLeast("largest hole", piston.largestFinish(), bore.least()));
    }
}
