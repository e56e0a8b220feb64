package org.borewright.api.shown;

import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;

/**
 * The least and the greatest of something.
 *
 * @param least never rounded down
 * @param greatest never rounded up
 */
public record ShownLimits(ShownLength least, ShownLength greatest) {

    /** Limits that something must keep: rounded inward. */
    public static ShownLimits of(Limits limits, LengthUnit unit) {
        return new ShownLimits(
                ShownLength.of(limits.least(), unit, Flattery.LOWER_LIMIT),
                ShownLength.of(limits.greatest(), unit, Flattery.UPPER_LIMIT));
    }

    /** A range that something has: rounded to the nearest. */
    public static ShownLimits ofRange(Limits range, LengthUnit unit) {
        return new ShownLimits(ShownLength.of(range.least(), unit), ShownLength.of(range.greatest(), unit));
    }
}
