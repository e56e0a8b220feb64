package org.borewright.measure.survey;

import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.measure.Length;

/** What was measured in one hole, at 20 °C. */
public sealed interface Survey permits NotMeasured, SingleDiameter, Grid {

    /** All diameters read, in no particular order. */
    Stream<Length> readings();

    /** The largest diameter read; empty when nothing was measured. */
    default Optional<Length> largest() {
        return readings().max(Length::compareTo);
    }

    /** The smallest diameter read; empty when nothing was measured. */
    default Optional<Length> smallest() {
        return readings().min(Length::compareTo);
    }

    /** The largest diameter the hole can have at a depth from the deck; the largest of all where the depth tells nothing. */
    default Optional<Length> largestNear(Length depth) {
        return largest();
    }
}
