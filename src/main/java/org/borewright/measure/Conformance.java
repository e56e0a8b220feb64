package org.borewright.measure;

import java.util.Locale;

/** The probability that a true value lies within its limit, for a normal distribution around the value (JCGM 106, 7.3). */
public final class Conformance {

    private Conformance() {}

    /**
     * The conformance probability for one limit.
     *
     * @param margin how far the value lies inside the limit; negative when beyond it
     * @param expandedUncertainty U = 2u in the same unit, above zero
     * @throws IllegalArgumentException if the uncertainty is not above zero
     */
    public static double probability(long margin, long expandedUncertainty) {
        if (expandedUncertainty <= 0) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "an uncertainty of %d is not above zero", expandedUncertainty));
        }
        return standardNormal(2.0 * margin / expandedUncertainty);
    }

    /**
     * Φ(z), by the series 1/2 + φ(z)·(z + z³/3 + z⁵/(3·5) + …) (Marsaglia, Journal of Statistical Software 11(4), 2004); exact to
     * within 1e-15, and 0 or 1 beyond ±8.
     */
    static double standardNormal(double z) {
        if (Math.abs(z) > 8) {
            return z > 0 ? 1 : 0;
        }
        double sum = z;
        double term = z;
        for (int i = 3; sum + term != sum; i += 2) {
            term *= z * z / i;
            sum += term;
        }
        return 0.5 + sum * Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    }
}
