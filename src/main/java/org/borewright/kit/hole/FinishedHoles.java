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
import org.borewright.measure.survey.Finding;

/**
 * Which pistons already finished holes take: the size of each hole is the one whose clearance window holds it. A finished hole is true, so
 * a larger size owes only the hone its stock: where more than that is left, the bar takes it first; where less is left, the hone alone,
 * and it may go past the target as far as the window holds.
 */
public final class FinishedHoles {

    private final Length honeStock;
    private final Length honeCleanUp;
    private final boolean mayBeCut;

    /** For the holes of an engine. */
    public FinishedHoles(Engine engine) {
        this.honeStock = engine.bore().honeStock();
        this.honeCleanUp = engine.bore().honeCleanUp();
        this.mayBeCut = engine.build().construction().mayBeBored();
    }

    /**
     * What becomes of a finished hole with a choice of pistons; of several grades the best fitting, nearest to target. Of a hole that nobody
     * measured, or whose readings are in question, nothing is certain and nothing excluded; what must be cut out of it is cut, whatever its
     * size.
     */
    public HoleAtSize at(Hole hole, List<Piston> pistons) {
        if (hole.survey().isBeyondMachining(mayBeCut)) {
            return HoleAtSize.of(hole, Work.AS_IS, Certainty.NO, pistons.get(0));
        }
        if (hole.diameters().isEmpty()) {
            boolean cut = mayBeCut && hole.survey().has(Finding.Weight.MACHINABLE);
            return HoleAtSize.of(hole, cut ? Work.REBORE : Work.AS_IS, Certainty.POSSIBLE, pistons.get(0));
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
        Length target = piston.shape().finishForCleanUp();
        Length clean = hole.cleanUp().best().orElseThrow();
        if (!target.minus(clean).minus(honeStock).isLessThan(hole.uncertainty())) {
            return HoleAtSize.of(hole, Work.REBORE, HoleCleanUp.proven(hole.survey(), Certainty.CERTAIN), piston);
        }
        Length honed = HoneOnly.cleanUp(clean, Length.ZERO, honeCleanUp);
        Certainty clear = HoneOnly.at(honedAtMost(hole, piston), honed, hole.uncertainty());
        Length finish = clear == Certainty.NO ? target : target.max(honed);
        return HoleAtSize.of(hole, Work.HONE_ONLY, HoleCleanUp.proven(hole.survey(), clear), piston, finish);
    }

    /**
     * The largest a finished hole may be honed to. A true one a little past the target is honed to no more than it needs, and saves the next
     * size: the window of the smallest such piston still holds it, proven. One with a finding to cut out goes to the target and no further.
     */
    public static Length honedAtMost(Hole hole, Piston piston) {
        PistonShape shape = piston.shape();
        return hole.survey().has(Finding.Weight.MACHINABLE)
                ? shape.finishForCleanUp()
                : shape.diameter().least().plus(shape.clearance().greatest()).minus(hole.uncertainty());
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
