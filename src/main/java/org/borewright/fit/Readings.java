package org.borewright.fit;

import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/**
 * How well the readings are known that a value was reckoned from.
 *
 * @param reading the one that may be taken again
 * @param carried how much of it the value carries
 * @param beside of a second length that was measured apart; none where the other is exact
 */
public record Readings(Uncertainty reading, Carried carried, Uncertainty beside) {

    /** Part against part, or a reading that says nothing of its gauge. */
    public static final Readings NONE = new Readings(Uncertainty.NONE, Carried.ONCE, Uncertainty.NONE);

    /** Whether a second length was measured. */
    boolean areTwo() {
        return !beside.equals(Uncertainty.NONE);
    }

    /** The same with that one taken otherwise. */
    Readings with(Uncertainty other) {
        return new Readings(other, carried, beside);
    }

    /** The same with the second length taken otherwise. */
    Readings beside(Uncertainty other) {
        return new Readings(reading, carried, other);
    }

    /** The same with all taken at 20 °C, and so stated. */
    Readings atReference() {
        return with(reading.atReference()).beside(beside.atReference());
    }

    /** The expanded uncertainty of the value, rounded up. */
    Length expanded() {
        Length carriedOn = carried.from(reading);
        return areTwo() ? Uncertainty.ofApart(carriedOn, beside.expanded()) : carriedOn;
    }
}
