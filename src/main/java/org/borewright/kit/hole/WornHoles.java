package org.borewright.kit.hole;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.fit.Clearance;
import org.borewright.fit.Comparison;
import org.borewright.fit.HoneOnly;
import org.borewright.fit.Outcome;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Finding;

/** Whether worn holes come out clean at a size: by the bar, by the hone alone, or not at all. */
public final class WornHoles {

    private final Engine engine;
    private final Optional<Size> present;

    /** For the holes of an engine of a present size; hearsay tells nothing. */
    public WornHoles(Engine engine, PresentSize present) {
        this.engine = engine;
        this.present = present.reliable();
    }

    /**
     * What becomes of a hole with a choice of pistons. Of several grades the smallest that is certain, for it takes out least metal;
     * where nothing is cut, the one nearest to its target.
     */
    public HoleAtSize at(Choice choice, Hole hole, List<Piston> pistons) {
        if (workFor(choice.size()) == Work.AS_IS && hole.diameters().isPresent()) {
            return pistons.stream()
                    .map(piston -> at(choice.size(), hole, piston))
                    .min(FinishedHoles.bestFitting(hole))
                    .orElseThrow();
        }
        HoleAtSize best = at(choice.size(), hole, pistons.get(0));
        for (int i = 1; i < pistons.size() && best.certainty() != Certainty.CERTAIN; i++) {
            HoleAtSize next = at(choice.size(), hole, pistons.get(i));
            best = next.certainty().compareTo(best.certainty()) < 0 ? next : best;
        }
        return best;
    }

    private HoleAtSize at(Size size, Hole hole, Piston piston) {
        Work work = workFor(size);
        return HoleAtSize.of(hole, work, certainty(size, work, hole, piston), piston);
    }

    /** Whether a hole would come out clean at a finish of a size that no piston was made for. */
    public Certainty withoutPiston(Size size, Hole hole, Length finish) {
        boolean ruledOut = workFor(size) != Work.REBORE
                || present.filter(now -> size.compareTo(now) < 0).isPresent()
                || isBeyondMachining(hole);
        return ruledOut ? Certainty.NO : hole.cleanUp().at(finish, engine.bore().honeStock());
    }

    private Work workFor(Size size) {
        if (!engine.build().construction().mayBeBored()) {
            return Work.AS_IS;
        }
        return present.filter(now -> now.compareTo(size) == 0).isPresent() ? Work.HONE_ONLY : Work.REBORE;
    }

    private Certainty certainty(Size size, Work work, Hole hole, Piston piston) {
        boolean tooSmall = present.filter(now -> size.compareTo(now) < 0).isPresent();
        if (tooSmall || isBeyondMachining(hole)) {
            return Certainty.NO;
        }
        return switch (work) {
            case REBORE ->
                hole.cleanUp()
                        .at(piston.shape().finishForCleanUp(), engine.bore().honeStock());
            case HONE_ONLY -> byHone(hole, piston);
            case AS_IS -> asItIs(hole, piston);
        };
    }

    private boolean isBeyondMachining(Hole hole) {
        return hole.survey().isBeyondMachining(engine.build().construction().mayBeBored());
    }

    private static Certainty byHone(Hole hole, Piston piston) {
        if (hole.survey().isAlwaysMachined()) {
            return Certainty.NO;
        }
        Length finish = piston.shape().finishForCleanUp();
        Certainty reached = hole.honeCleanUp()
                .map(cleanUp -> HoneOnly.at(finish, cleanUp, hole.uncertainty()))
                .orElse(Certainty.POSSIBLE);
        return HoleCleanUp.proven(hole.survey(), reached);
    }

    /**
     * Whether a piston may run in a hole with nothing cut: at most possible while something stands in the way of calling it certain, a poor
     * surface as well, for the hone that settles it makes the hole larger.
     */
    static Certainty asItIs(Hole hole, Piston piston) {
        if (hole.survey().has(Finding.Weight.MACHINABLE)) {
            return Certainty.NO;
        }
        Certainty fits = hole.diameters()
                .map(diameters -> of(Clearance.check(diameters, hole.ofReading(), piston.shape())))
                .orElse(Certainty.POSSIBLE);
        return HoleCleanUp.proven(
                hole.survey(), hole.survey().has(Finding.Weight.HONE) ? fits.and(Certainty.POSSIBLE) : fits);
    }

    /** What clearances at their worst say of a hole that is not to be cut. */
    private static Certainty of(List<Comparison> clearances) {
        return clearances.stream()
                .map(check -> of(check.outcome()))
                .reduce(Certainty::and)
                .orElse(Certainty.POSSIBLE);
    }

    private static Certainty of(Outcome outcome) {
        return switch (outcome) {
            case IN -> Certainty.CERTAIN;
            case TOO_CLOSE, UNKNOWN, NOT_CHECKED -> Certainty.POSSIBLE;
            case OUT -> Certainty.NO;
        };
    }
}
