package org.borewright.measure;

import java.util.Locale;

/**
 * How a material grows with temperature.
 *
 * @param perKelvin the coefficient α in 1/K, such as 11.4e-6 for grey iron; from 0 to 1e-4
 * @param standardUncertainty the standard uncertainty of α in 1/K, from 0 to 1e-4
 */
public record Expansion(double perKelvin, double standardUncertainty) {

    /** The standard uncertainty of α where none is stated: 1 × 10⁻⁶ /K (common practice). */
    public static final double USUAL_UNCERTAINTY = 1e-6;

    /** @throws IllegalArgumentException if either is negative, above 1e-4 or not a number */
    public Expansion {
        if (!(perKelvin >= 0 && perKelvin <= 1e-4)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "expansion %s is outside 0 to 1e-4 per kelvin", perKelvin));
        }
        if (!(standardUncertainty >= 0 && standardUncertainty <= 1e-4)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "uncertainty %s of the expansion is outside 0 to 1e-4 per kelvin",
                    standardUncertainty));
        }
    }

    /**
     * The length a part has at 20 °C, from its length at the temperature of measuring: D20 = D / (1 + α (t − 20)), rounded once
     * to a whole nanometre, half to even. Source: ISO 1 and the definition of α.
     */
    public Length atReference(Length measured, Temperature temperature) {
        double growth = 1 + perKelvin * temperature.kelvinsAboveReference();
        return Length.ofNanometres((long) Math.rint(measured.nanometres() / growth));
    }
}
