package org.borewright.fit.shape;

import java.util.Optional;
import org.borewright.measure.Length;

/**
 * The shape that a hole is honed to.
 *
 * @param choke how much wider it is at the bottom; empty where it is to be straight
 * @param uneven the most that it may be out of that, along one axis, and out of round
 */
public record HonedShape(Optional<Choke> choke, Length uneven) {

    /** The most that a good hole widens from its narrowest to its widest place: its choke, and taper and out-of-round besides. */
    public Length widens() {
        return choke.map(Choke::greatestDifference).orElse(Length.ZERO).plus(uneven.doubled());
    }
}
