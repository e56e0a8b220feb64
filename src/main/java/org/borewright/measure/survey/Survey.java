package org.borewright.measure.survey;

import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.borewright.measure.Length;

/** The diameters of one hole: as read, or corrected to 20 °C by {@link #map}. */
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

    /** The same survey with every diameter changed the same way: corrected to 20 °C, or turned into another unit. */
    Survey map(UnaryOperator<Length> change);
}
