package org.borewright.kit.hole;

import java.util.Comparator;
import java.util.List;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.fit.Certainty;
import org.borewright.fit.Clearance;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * Which pistons already finished holes take: the size of each hole is the one whose clearance window holds it. A finished hole is true, so
 * a larger size owes only the hone its stock.
 */
public final class FinishedHoles {

    private final Length honeStock;

    /** For the holes of an engine. */
    public FinishedHoles(Engine engine) {
        this.honeStock = engine.bore().honeStock();
    }

    /** What becomes of a finished hole with a choice of pistons; of several grades the best fitting, nearest to target. */
    public HoleAtSize at(Hole hole, List<Piston> pistons) {
        return pistons.stream()
                .map(piston -> at(hole, piston))
                .min(Comparator.comparing((HoleAtSize fate) -> fate.work() == Work.AS_IS ? 0 : 1)
                        .thenComparing(HoleAtSize::certainty)
                        .thenComparing(fate -> offTarget(hole, fate.piston())))
                .orElseThrow();
    }

    private HoleAtSize at(Hole hole, Piston piston) {
        Limits diameters = hole.diameters().orElseThrow();
        Certainty asItIs = WornHoles.of(Clearance.check(diameters, hole.uncertainty(), piston.shape()));
        if (asItIs != Certainty.NO) {
            return HoleAtSize.of(hole, Work.AS_IS, asItIs, piston);
        }
        Length margin = piston.shape().finishForCleanUp().minus(honeStock).minus(diameters.greatest());
        boolean canBeHoned = !margin.isLessThan(hole.uncertainty());
        return HoleAtSize.of(hole, Work.HONE_ONLY, canBeHoned ? Certainty.CERTAIN : Certainty.NO, piston);
    }

    /** How far the mean clearance of a hole lies from the piston's target, doubled so that it stays whole. */
    public static Length offTarget(Hole hole, Piston piston) {
        Limits diameters = hole.diameters().orElseThrow();
        PistonShape shape = piston.shape();
        ClearanceWindow window = shape.clearance();
        return diameters
                .least()
                .plus(diameters.greatest())
                .minus(shape.diameter().least().plus(shape.diameter().greatest()))
                .minus(window.target().doubled())
                .absolute();
    }
}
