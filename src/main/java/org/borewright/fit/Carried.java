package org.borewright.fit;

import org.borewright.measure.Length;

/** How much of the uncertainty of one reading a value reckoned from it carries (JCGM 100, 5.1.3: the sensitivity coefficient). */
public enum Carried {
    /** A diameter, or a diameter less something exact. */
    ONCE(1),
    /** Twice a diameter or twice a radius: the clean-up by the bar. */
    TWICE(2),
    /** A length along the circumference: the ring gap. */
    PI_TIMES(Math.PI);

    private final double factor;

    Carried(double factor) {
        this.factor = factor;
    }

    /** The expanded uncertainty of the value, rounded up. */
    Length from(Length ofReading) {
        return Length.ofNanometres((long) Math.ceil(factor * ofReading.nanometres()));
    }

    /** The most uncertain the reading may be for the value to be no more uncertain than so much, rounded down. */
    Length readingWithin(Length ofValue) {
        return Length.ofNanometres((long) Math.floor(ofValue.nanometres() / factor));
    }
}
