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

    /**
     * The standard uncertainty of α where none is stated, for an iron sleeve pressed in aluminium: 3 × 10⁻⁶ /K, for how far the sleeve
     * follows the barrel is only estimated (theory of thick cylinders).
     */
    public static final double SLEEVE_IN_ALUMINIUM_UNCERTAINTY = 3e-6;

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
        return atReference(measured, 0, temperature);
    }

    /**
     * The same, read with a gauge that was zeroed on a ring not at 20 °C: what the ring had grown goes on to the reading first.
     *
     * @param ringGrowth in nanometres
     */
    public Length atReference(Length read, double ringGrowth, Temperature temperature) {
        double growth = 1 + perKelvin * temperature.kelvinsAboveReference();
        return Length.ofNanometres((long) Math.rint((read.nanometres() + ringGrowth) / growth));
    }

    /**
     * What a part of a length at 20 °C measures at a temperature: D20 (1 + α (t − 20)), rounded down, so that a limit turned into a
     * reading is never passed by the rounding. Source: as above.
     */
    public Length asRead(Length atReference, Temperature temperature) {
        return asRead(atReference, 0, temperature);
    }

    /**
     * The same with a gauge that was zeroed on a ring not at 20 °C: it shows what the ring had grown too little.
     *
     * @param ringGrowth in nanometres
     */
    public Length asRead(Length atReference, double ringGrowth, Temperature temperature) {
        double growth = 1 + perKelvin * temperature.kelvinsAboveReference();
        return Length.ofNanometres((long) Math.floor(atReference.nanometres() * growth - ringGrowth));
    }
}
