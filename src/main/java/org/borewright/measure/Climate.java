package org.borewright.measure;

import java.util.Optional;

/**
 * The temperature at which parts were measured, and how well it is known.
 *
 * @param stated the temperature stated, or empty when nobody wrote it down
 */
public record Climate(Optional<Temperature> stated) {

    /** Nobody wrote the temperature down: taken as 20 ± 5 °C, rectangular (common practice). */
    public static final Climate NOT_STATED = new Climate(Optional.empty());

    /** Measured at a stated temperature. */
    public static Climate at(Temperature temperature) {
        return new Climate(Optional.of(temperature));
    }

    /** The temperature to correct from; 20 °C when none was stated. */
    public Temperature temperature() {
        return stated.orElse(Temperature.REFERENCE);
    }

    /** The standard uncertainty in kelvins: 1 K when stated, 5/√3 K when not (JCGM 100, 4.3.7). */
    public double standardUncertainty() {
        return stated.isPresent() ? 1 : 5 / Math.sqrt(3);
    }

    /** Whether a caution is due: stated, and more than 5 K away from 20 °C (common practice). */
    public boolean isFarFromReference() {
        return temperature().isFurtherFromReferenceThan(5);
    }
}
