package org.borewright.fit;

import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/** How much of the uncertainty of one reading a value reckoned from it carries (JCGM 100, 5.1.3: the sensitivity coefficient). */
public enum Carried {
    /** A diameter, or a diameter less something exact. */
    ONCE(1),
    /** Twice a diameter or twice a radius: the clean-up by the bar. */
    TWICE(2),
    /** A length along the circumference: the ring gap. */
    PI_TIMES(Math.PI),
    /** A difference of two readings of one gauge, which keeps only its resolution and repeatability: taper and out-of-round. */
    DIFFERENCE(1) {
        @Override
        Length from(Uncertainty reading) {
            return reading.expandedOfDifference();
        }
    };

    private final double factor;

    Carried(double factor) {
        this.factor = factor;
    }

    /** The expanded uncertainty of the value, rounded up. */
    Length from(Uncertainty reading) {
        return Length.ofNanometres((long) Math.ceil(factor * reading.expanded().nanometres()));
    }
}
