package org.borewright.fit;

import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * Whether a reading of a piston that has run is believed: a skirt is oval and tapers, so that a reading far too small was taken elsewhere,
 * and no piston grows. Nothing is computed from a reading that is not believed. Source: tolerance of the piston maker; common practice.
 */
public final class WornPistonReading {

    private WornPistonReading() {}

    /** Why a diameter at 20 °C is not believed of a piston of a tolerance; empty where it is. */
    public static Optional<String> doubted(Length diameter, Length uncertainty, Limits tolerance) {
        if (diameter.isLessThan(tolerance.least().minus(CommonPractice.pistonReadAmiss()))) {
            return Optional.of(
                    "the piston reads more than 0.05 mm below its tolerance: measure it again at its gauge height, for it"
                            + " was measured across the pin, at the wrong height, or is worn out");
        }
        return diameter.minus(uncertainty).isMoreThan(tolerance.greatest())
                ? Optional.of(
                        "the piston reads larger than any of its number: find out which piston it is, and measure it again at"
                                + " the temperature of the hole")
                : Optional.empty();
    }
}
