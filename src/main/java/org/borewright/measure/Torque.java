package org.borewright.measure;

import java.util.Locale;

/**
 * A tightening torque.
 *
 * @param millinewtonMetres in thousandths of a newton metre; above zero
 */
public record Torque(long millinewtonMetres) {

    /** One pound-force foot in newton metres, exactly (0.453 592 37 kg × 9.806 65 m/s² × 0.3048 m). */
    private static final double POUND_FORCE_FOOT = 0.453_592_37 * 9.806_65 * 0.3048;

    /** One kilogram-force metre in newton metres, exactly. */
    private static final double KILOGRAM_FORCE_METRE = 9.806_65;

    /** @throws IllegalArgumentException unless above zero */
    public Torque {
        if (millinewtonMetres <= 0) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "a torque of %d mN·m is not above zero", millinewtonMetres));
        }
    }

    /** In newton metres. */
    public double newtonMetres() {
        return millinewtonMetres / 1000.0;
    }

    /** In pound-force feet. */
    public double poundForceFeet() {
        return newtonMetres() / POUND_FORCE_FOOT;
    }

    /** In kilogram-force metres. */
    public double kilogramForceMetres() {
        return newtonMetres() / KILOGRAM_FORCE_METRE;
    }
}
