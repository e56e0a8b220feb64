package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.MassRange;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/**
 * A piston measured at its gauge height across the thrust faces, at 20 °C, against the tolerance of its number. Source: the tolerance is
 * the piston maker's (ISO 1, ISO 14253-1). A skirt is oval and tapers, so that a reading far too small was taken elsewhere.
 */
public final class MeasuredPiston {

    private MeasuredPiston() {}

    /** Whether it was measured where it should be: no more than 0.05 mm below its tolerance, that itself included (common practice). */
    public static Comparison reading(String piston, Length diameter, Limits tolerance) {
        return Rule.PISTON_READING.atLeast(piston, diameter, tolerance.least().minus(CommonPractice.pistonReadAmiss()));
    }

    /**
     * Whether its mass may be that of its number: within a tenth of what is listed, for whoever matches a set takes a little off; with pin
     * and clips, of which no list says what they weigh, anything up to twice that (common practice). What is farther off was misread, or
     * is another piston. Asked is the nearer of both limits.
     *
     * @param bare whether it was weighed with nothing in it
     */
    public static Comparison mass(String piston, long milligrams, MassRange listed, boolean bare) {
        Amount weighed = Amount.ofMilligrams(milligrams);
        long least = listed.leastMilligrams() - listed.leastMilligrams() / 10;
        long greatest =
                bare ? listed.greatestMilligrams() + listed.greatestMilligrams() / 10 : 2 * listed.greatestMilligrams();
        return milligrams - least < greatest - milligrams
                ? Rule.PISTON_MASS.atLeast(piston, weighed, Amount.ofMilligrams(least))
                : Rule.PISTON_MASS.atMost(piston, weighed, Amount.ofMilligrams(greatest));
    }

    /** The diameter against both limits of its tolerance. */
    public static List<Comparison> check(String piston, Length diameter, Uncertainty uncertainty, Limits tolerance) {
        return List.of(
                Rule.PISTON_LEAST.atLeast(piston, diameter, tolerance.least()).within(uncertainty),
                Rule.PISTON_GREATEST
                        .atMost(piston, diameter, tolerance.greatest())
                        .within(uncertainty));
    }
}
