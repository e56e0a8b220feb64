package org.borewright.kit.hole;

import java.util.Optional;
import java.util.function.Predicate;
import org.borewright.catalog.BoreSpec;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * What a hole of a request would be if it were read otherwise, with the same gauge and as warm, so that the very rules may be asked of it.
 *
 * @param bore of the engine
 * @param with what and how warm the holes are measured
 * @param presentLeast the smallest hole the present size can have had; empty when the present size is not known
 */
public record Rereading(BoreSpec bore, Measuring with, Optional<Length> presentLeast) {

    /** The hole, surveyed so. */
    public Hole of(Hole hole, CylinderSurvey survey) {
        return Hole.of(bore, hole.cylinder(), survey, with, presentLeast);
    }

    /** What a diameter at 20 °C would read, rounded down. */
    public Length asRead(Length diameter) {
        return bore.expansion()
                .asRead(diameter, with.gauge().ringGrowth(), with.climate().temperature());
    }

    /**
     * The last reading that passes on the way from one that does, up or down.
     *
     * @param failing where the way ends: it is never asked itself
     */
    public static Length lastPassing(Length passing, Length failing, Predicate<Length> passes) {
        long last = passing.nanometres();
        long beyond = failing.nanometres();
        while (Math.abs(beyond - last) > 1) {
            long middle = last + (beyond - last) / 2;
            if (passes.test(Length.ofNanometres(middle))) {
                last = middle;
            } else {
                beyond = middle;
            }
        }
        return Length.ofNanometres(last);
    }
}
