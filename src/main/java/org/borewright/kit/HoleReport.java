package org.borewright.kit;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.Check;
import org.borewright.fit.CleanUp;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.measure.survey.BoreShape;

/**
 * All that is said of one hole.
 *
 * @param hole as surveyed, at 20 °C
 * @param shape its taper and out-of-round; empty without a grid
 * @param cleanUp by the bar, best and worst; empty for a finished hole and for a wall that is never bored
 * @param atSize what becomes of it at the size named; empty when none is named, or no piston was made for it
 * @param ringGaps the gaps of its rings there; none where it is left as it is and was not measured
 * @param checks clean-up, wall, clearance, shape, gaps
 */
public record HoleReport(
        Hole hole,
        Optional<BoreShape> shape,
        Optional<CleanUp> cleanUp,
        Optional<HoleAtSize> atSize,
        List<RingGapIn> ringGaps,
        List<Check> checks) {

    /** Copies the lists. */
    public HoleReport {
        ringGaps = List.copyOf(ringGaps);
        checks = List.copyOf(checks);
    }
}
