package org.borewright.kit.rings;

import org.borewright.measure.Expansion;
import org.borewright.measure.Length;
import org.borewright.measure.Measuring;
import org.borewright.measure.Uncertainty;

/**
 * The piston that runs in a hole, as it was measured.
 *
 * @param read its diameter as the gauge showed it
 * @param with with what and how warm it was measured
 * @param alloy how its design grows
 */
public record PresentPistonMeasured(Length read, Measuring with, Expansion alloy) {

    /** Its diameter at 20 °C. Source: ISO 1. */
    public Length diameter() {
        return with.atReference(read, alloy);
    }

    /** The uncertainty of that, term by term. Source: JCGM 100, 5.1.2. */
    public Uncertainty budget() {
        return with.budget(diameter(), alloy);
    }
}
