package org.borewright.fit;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/**
 * The holes in which a piston has its clearance, proven by the gauges at hand: piston + least + U to piston + greatest − U, with U the
 * uncertainty of the clearance. Source: the window is the piston maker's; ISO 14253-1.
 */
public final class HoneWindow {

    private HoneWindow() {}

    /**
     * The holes from the smallest to the largest; empty where the gauges are too coarse to prove any.
     *
     * @param piston as measured, or its tolerance: then for the largest piston at the least and for the smallest at the greatest
     * @param uncertainty of a clearance, hole and piston together
     */
    public static Optional<Limits> of(Limits piston, ClearanceWindow clearance, Length uncertainty) {
        Length least = piston.greatest().plus(clearance.least()).plus(uncertainty);
        Length greatest = piston.least().plus(clearance.greatest()).minus(uncertainty);
        return least.isMoreThan(greatest) ? Optional.empty() : Optional.of(new Limits(least, greatest));
    }

    /**
     * Whether a hole honed to target will be proven within both limits; where not, the gauge that would prove it.
     *
     * @param eachWay how far either end of the hole is honed off the target; zero where it is straight
     * @param ofHole of the hole when it will be measured
     * @param ofPiston of the measured piston
     */
    public static List<Comparison> checkTarget(
            ClearanceWindow clearance, Length eachWay, Uncertainty ofHole, Uncertainty ofPiston) {
        return List.of(
                Rule.TARGET_LEAST
                        .atLeast("", clearance.target().minus(eachWay), clearance.least())
                        .within(ofHole, ofPiston),
                Rule.TARGET_GREATEST
                        .atMost("", clearance.target().plus(eachWay), clearance.greatest())
                        .within(ofHole, ofPiston));
    }
}
