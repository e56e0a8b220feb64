package org.borewright.kit.hole;

import java.util.Optional;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.measure.Length;

/**
 * A reading of a worn hole that would change the answer, and how far it would have to move, all other readings as they are.
 *
 * @param cylinder the hole
 * @param read which of its readings
 * @param side above the limit, or from it down
 * @param limit as it would be read with the gauge and at the temperature of the request
 * @param then what the answer would be
 */
public record TurningPoint(String cylinder, ReadingLimit.Read read, Side side, Length limit, Then then) {

    /** On which side of the limit the answer is another. */
    public enum Side {
        /** Above it: the size no longer serves, or rings only no longer will do. */
        ABOVE,
        /** At it and below: a smaller size serves, or rings only will do. */
        AT_MOST
    }

    /** What the answer would be. */
    public sealed interface Then {}

    /**
     * The size of the engine would be another.
     *
     * @param size the size it would go to; empty where none would be certain
     */
    public record Goes(Optional<Size> size) implements Then {}

    /**
     * Whether new rings alone will do would be another.
     *
     * @param ringsOnly how certain that would be
     */
    public record Runs(Certainty ringsOnly) implements Then {}
}
