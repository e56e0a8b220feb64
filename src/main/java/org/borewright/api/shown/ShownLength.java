package org.borewright.api.shown;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * A length on the wire: {@code {"value": 70.26, "nm": 70260000}}. It writes itself, for an answer holds hundreds of them.
 *
 * @param millionths the figure in millionths of the unit of the request: exact in mm, rounded in inches
 * @param nm the exact length in nanometres
 */
public record ShownLength(long millionths, long nm) implements WritesItself {

    private static final int LEAST_DECIMALS = 3;

    /** A length that was found. */
    public static ShownLength of(Length length, LengthUnit unit) {
        return of(length, unit, Flattery.VALUE);
    }

    /** A length of a kind that decides its rounding. */
    public static ShownLength of(Length length, LengthUnit unit, Flattery kind) {
        return new ShownLength(length.toMillionths(unit, kind.rounding()), length.nanometres());
    }

    /** A length that may be absent. */
    public static @Nullable ShownLength of(Optional<Length> length, LengthUnit unit) {
        return length.isPresent() ? of(length.get(), unit) : null;
    }

    /** The figure, without needless zeros, but never fewer than three decimals. */
    @Override
    public String toString() {
        Figure figure = new Figure();
        figure.decimal(millionths, LEAST_DECIMALS);
        return figure.toString();
    }

    @Override
    public void serialize(JsonGenerator json, SerializerProvider provider) throws IOException {
        Figure figure = Figure.ofValue(millionths, LEAST_DECIMALS);
        figure.exact(nm);
        figure.closeTo(json);
    }
}
