package org.borewright.kit.table;

import java.util.Optional;
import org.borewright.catalog.Size;
import org.borewright.kit.hole.ReadingLimit;
import org.borewright.measure.Length;

/**
 * A reading of a worn hole that would change the size of the engine, and how far it would have to move, all other readings as they are.
 *
 * @param cylinder the hole
 * @param read which of its readings
 * @param side above the limit, or from it down
 * @param limit as it would be read with the gauge and at the temperature of the request
 * @param then the size the engine would go to; empty where none would be certain
 */
public record TurningPoint(String cylinder, ReadingLimit.Read read, Side side, Length limit, Optional<Size> then) {

    /** On which side of the limit the answer is another. */
    public enum Side {
        /** Above it: the size no longer serves. */
        ABOVE,
        /** At it and below: a smaller size serves. */
        AT_MOST
    }
}
