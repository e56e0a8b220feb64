package org.borewright.kit.hole;

import java.util.Comparator;
import java.util.List;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.fit.Certainty;
import org.borewright.fit.HoneOnly;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * Which pistons already finished holes take: the size of each hole is the one whose clearance window holds it. A finished hole is true, so
 * a larger size owes only the hone its stock: where more than that is left, the bar takes it first; where less is left, the hone alone.
 */
public final class FinishedHoles {

    private final Length honeStock;
    private final boolean mayBeCut;

    /** For the holes of an engine. */
    public FinishedHoles(Engine engine) {
        this.honeStock = engine.bore().honeStock();
        this.mayBeCut = engine.build().construction().mayBeBored();
    }

    /**
     * What becomes of a finished hole with a choice of pistons; of several grades the best fitting, nearest to target. Of a hole whose readings
     * are in question nothing is certain and nothing excluded.
     */
    public HoleAtSize at(Hole hole, List<Piston> pistons) {
        if (hole.survey().isBeyondMachining(mayBeCut)) {
            return HoleAtSize.of(hole, Work.AS_IS, Certainty.NO, pistons.get(0));
        }
        if (hole.diameters().isEmpty()) {
            return HoleAtSize.of(hole, Work.AS_IS, Certainty.POSSIBLE, pistons.get(0));
        }
        return pistons.stream()
                .map(piston -> at(hole, piston))
                .min(bestFitting(hole))
                .orElseThrow();
    }

    /** The pistons whose windows hold a finished hole with nothing cut, proven or not, the best fitting first. */
    public static List<Piston> holding(Hole hole, List<Piston> pistons) {
        return pistons.stream()
                .map(piston -> HoleAtSize.of(hole, Work.AS_IS, WornHoles.asItIs(hole, piston), piston))
                .filter(HoleAtSize::runsAsItIs)
                .sorted(bestFitting(hole))
                .map(HoleAtSize::piston)
                .toList();
    }

    /** As it is before any work, the more certain first, then the nearest to target. */
    public static Comparator<HoleAtSize> bestFitting(Hole hole) {
        return Comparator.comparing((HoleAtSize fate) -> fate.work() == Work.AS_IS ? 0 : 1)
                .thenComparing(HoleAtSize::certainty)
                .thenComparing(fate -> offTarget(hole, fate.piston()));
    }

    private HoleAtSize at(Hole hole, Piston piston) {
        Certainty asItIs = WornHoles.asItIs(hole, piston);
        if (asItIs != Certainty.NO || !mayBeCut) {
            return HoleAtSize.of(hole, Work.AS_IS, asItIs, piston);
        }
        Length finish = piston.shape().finishForCleanUp();
        Length clean = hole.cleanUp().best().orElseThrow();
        boolean byBar = !finish.minus(clean).minus(honeStock).isLessThan(hole.uncertainty());
        Certainty clear = byBar
                ? Certainty.CERTAIN
                : HoneOnly.at(finish, HoneOnly.cleanUp(clean, Length.ZERO), hole.uncertainty());
        return HoleAtSize.of(
                hole, byBar ? Work.REBORE : Work.HONE_ONLY, HoleCleanUp.proven(hole.survey(), clear), piston);
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
