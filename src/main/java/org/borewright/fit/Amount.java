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

    /** A ratio, rounded up to the next millionth: for comparison with an upper limit. */
    public static Amount ratioRoundedUp(double ratio) {
        return new Amount((long) Math.ceil(ratio * 1e6), Quantity.RATIO);
    }

    /** A share of a limit in per cent, rounded up to the next ten-thousandth. */
    public static Amount perCentRoundedUp(double share) {
        return new Amount((long) Math.ceil(share * 1e6), Quantity.PER_CENT);
    }

    /** A mass. */
    public static Amount ofMilligrams(long milligrams) {
        return new Amount(milligrams, Quantity.MASS);
    }
}
