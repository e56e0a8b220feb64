package org.borewright.measure.survey;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/** The diameters of one hole: as read, or corrected to 20 °C by {@link #map}. */
public sealed interface Survey permits NotMeasured, SingleDiameter, Grid, QueriedGrid {

    /** All diameters read, in no particular order; empty when nothing was measured or what was is queried. */
    List<Length> readings();

    /** The smallest and the largest diameter read; empty when nothing was measured. */
    default Optional<Limits> diameters() {
        List<Length> readings = readings();
        return readings.isEmpty() ? Optional.empty() : Optional.of(Limits.around(readings));
    }

    /** The largest diameter read; empty when nothing was measured. */
    default Optional<Length> largest() {
        return diameters().map(Limits::greatest);
    }

    /** The smallest diameter read; empty when nothing was measured. */
    default Optional<Length> smallest() {
        return diameters().map(Limits::least);
    }

    /** The largest diameter the hole can have at a depth from the deck; the largest of all where the depth tells nothing. */
    default Optional<Length> largestNear(Length depth) {
        return largest();
    }

    /** The same survey with the diameters changed that tell how large the hole is at a depth from the deck. */
    default Survey mapNear(Length depth, UnaryOperator<Length> change) {
        return map(change);
    }

    /** The same survey with every diameter changed the same way: corrected to 20 °C, or turned into another unit. */
    Survey map(UnaryOperator<Length> change);
}
