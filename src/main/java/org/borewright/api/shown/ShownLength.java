package org.borewright.api.shown;

import java.math.BigDecimal;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * A length on the wire.
 *
 * @param value in the unit of the request: exact in mm, six decimals in inches
 * @param nm the exact length in nanometres
 */
public record ShownLength(BigDecimal value, long nm) {

    private static final int LEAST_DECIMALS = 3;

    /** A length that was found. */
    public static ShownLength of(Length length, LengthUnit unit) {
        return of(length, unit, Flattery.VALUE);
    }

    /** A length of a kind that decides its rounding. */
    public static ShownLength of(Length length, LengthUnit unit, Flattery kind) {
        return new ShownLength(trimmed(length.to(unit, kind.rounding())), length.nanometres());
    }

    /** A length that may be absent. */
    public static @Nullable ShownLength of(Optional<Length> length, LengthUnit unit) {
        return length.map(known -> of(known, unit)).orElse(null);
    }

    /** Without needless zeros, but never fewer than three decimals. */
    private static BigDecimal trimmed(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < LEAST_DECIMALS ? stripped.setScale(LEAST_DECIMALS) : stripped;
    }
}
