package org.borewright.fit.shape;

import java.util.Locale;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * The two clip grooves of a piston.
 *
 * @param span from the outer flank of one groove to the outer flank of the other
 * @param width the width of a groove
 * @param endFloat the float allowed between pin and clips; its least is never below zero
 * @param sidePlayGreatest the most that a groove may be wider than the wire
 */
public record ClipSeat(Limits span, Limits width, Limits endFloat, Length sidePlayGreatest) {

    /** @throws IllegalArgumentException if the least end float is negative */
    public ClipSeat {
        if (endFloat.least().isNegative()) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "least end float %s is negative", endFloat.least()));
        }
    }
}
