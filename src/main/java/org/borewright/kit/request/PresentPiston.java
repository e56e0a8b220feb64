package org.borewright.kit.request;

import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;

/**
 * The piston that runs in a hole now.
 *
 * @param design its design; empty when nobody knows
 * @param part its part; empty when its number is not known
 * @param asRead its diameter at gauge height across the thrust faces, as the gauge showed it; empty when not measured
 * @param measuring with what and how warm it was measured
 */
public record PresentPiston(
        Optional<PistonDesign> design, Optional<Piston> part, Optional<Length> asRead, Measuring measuring) {

    /** Nothing told. */
    public static final PresentPiston NOT_TOLD = new PresentPiston(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            new Measuring(Gauge.Kind.MICROMETER.usual(), Climate.NOT_STATED));
}
