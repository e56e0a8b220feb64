package org.borewright.api.shown;

import java.math.RoundingMode;

/** What a length is, and so which way it is rounded where the unit cannot show it whole: never so that it flatters. */
public enum Flattery {
    /** A value found: to the nearest. */
    VALUE(RoundingMode.HALF_EVEN),
    /** A lower limit: up. */
    LOWER_LIMIT(RoundingMode.CEILING),
    /** An upper limit: down. */
    UPPER_LIMIT(RoundingMode.FLOOR),
    /** A margin: toward zero. */
    MARGIN(RoundingMode.DOWN),
    /** An uncertainty: up. */
    UNCERTAINTY(RoundingMode.CEILING);

    private final RoundingMode rounding;

    Flattery(RoundingMode rounding) {
        this.rounding = rounding;
    }

    /** The direction. */
    public RoundingMode rounding() {
        return rounding;
    }
}
