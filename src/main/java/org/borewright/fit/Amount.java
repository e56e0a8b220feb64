package org.borewright.fit;

import org.borewright.measure.Length;

/**
 * A whole number of the units of its quantity, so that every comparison with a limit is exact.
 *
 * @param units how many
 * @param quantity of what
 */
public record Amount(long units, Quantity quantity) {

    /** A length. */
    public static Amount of(Length length) {
        return new Amount(length.nanometres(), Quantity.LENGTH);
    }

    /**
     * A ratio, rounded up to the next millionth: for comparison with an upper limit.
     *
     * @throws IllegalArgumentException if it is not a number
     */
    public static Amount ratioRoundedUp(double ratio) {
        return new Amount(millionthsRoundedUp(ratio), Quantity.RATIO);
    }

    /**
     * A ratio, rounded down to the millionth below: for the lowest there may be.
     *
     * @throws IllegalArgumentException if it is not a number
     */
    public static Amount ratioRoundedDown(double ratio) {
        return new Amount((long) Math.floor(number(ratio) * 1e6), Quantity.RATIO);
    }

    /**
     * A share of a limit in per cent, rounded up to the next ten-thousandth.
     *
     * @throws IllegalArgumentException if it is not a number
     */
    public static Amount perCentRoundedUp(double share) {
        return new Amount(millionthsRoundedUp(share), Quantity.PER_CENT);
    }

    /** A mass. */
    public static Amount ofMilligrams(long milligrams) {
        return new Amount(milligrams, Quantity.MASS);
    }

    /** Whether it is a ratio without end: no room is left above the piston. */
    public boolean isEndless() {
        return quantity == Quantity.RATIO && units == Long.MAX_VALUE;
    }

    private static long millionthsRoundedUp(double value) {
        return (long) Math.ceil(number(value) * 1e6);
    }

    /** A cast alone would turn what is not a number into zero, and zero is within every upper limit. */
    private static double number(double value) {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("not a number");
        }
        return value;
    }
}
