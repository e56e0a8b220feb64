package org.borewright.api.lookup.part;

import org.borewright.api.shown.ShownLength;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;

/**
 * A dimension of a part.
 *
 * @param dimension what is measured
 * @param least of the tolerance
 * @param greatest of the tolerance; the same as the least where it is one figure
 */
public record DimensionAnswer(String dimension, ShownLength least, ShownLength greatest) {

    static DimensionAnswer of(String dimension, Limits limits, LengthUnit unit) {
        return new DimensionAnswer(
                dimension, ShownLength.of(limits.least(), unit), ShownLength.of(limits.greatest(), unit));
    }

    static DimensionAnswer of(String dimension, Length length, LengthUnit unit) {
        return of(dimension, Limits.exactly(length), unit);
    }
}
