package org.borewright.fit;

import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/**
 * A probed wall against the diameters of the same hole. However a hole lies about the axis, its farthest wall is half its diameter
 * away at the least (geometry), so a shorter radius contradicts the diameter, and nothing is computed from it.
 */
public final class ProbedWall {

    private ProbedWall() {}

    /** Twice the radius against the largest diameter, twice as uncertain as a reading. */
    public static Comparison check(Length radius, Length largest, Uncertainty uncertainty) {
        return Rule.PROBED_WALL.atLeast("", radius.doubled(), largest).within(uncertainty, Carried.TWICE);
    }
}
