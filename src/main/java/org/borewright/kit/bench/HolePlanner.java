package org.borewright.kit.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Check;
import org.borewright.fit.Clearance;
import org.borewright.fit.Comparison;
import org.borewright.fit.HoneWindow;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.Choke;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.kit.choice.RingChecks;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Condition;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/**
 * Plans one hole for its piston. A hole that is past the target is honed as much further as brings it clean, while its clearance allows.
 * While no piston is measured the bar goes no further than the smallest piston in tolerance allows, so that whichever comes can still be
 * honed for, and nobody is told what to hone to; and a hole is called too large only if it is so for the largest.
 */
final class HolePlanner {

    private static final Check NOT_MEASURED = new Unchecked(
            Rule.CLEARANCE_LEAST,
            "",
            Outcome.UNKNOWN,
            "measure the hole: it is finished or never cut, and runs as it is or not at all");

    private final BenchRequest request;
    private final BoreSpec bore;
    private final boolean mayBeCut;
    private final Optional<Choke> choke;
    private final Length eachWay;
    private final Length widens;

    private final List<RingSet> rings;

    HolePlanner(BenchRequest request, Engine engine) {
        this.request = request;
        this.bore = engine.bore();
        this.mayBeCut = engine.build().construction().mayBeBored();
        this.choke = engine.limits().choke();
        this.eachWay = choke.map(Choke::eachWay).orElse(Length.ZERO);
        this.widens = engine.limits().honed().widens();
        this.rings = request.choice().ringSets();
    }

    /** The plan of a hole; without a piston for any of those that may go in. */
    HolePlan plan(Hole hole, List<Piston> mayGoIn, Optional<PistonInHand> piston) {
        Piston part = piston.map(PistonInHand::part).orElse(mayGoIn.get(0));
        Limits diameter =
                piston.map(measured -> Limits.exactly(measured.diameter())).orElseGet(() -> tolerance(mayGoIn));
        ClearanceWindow clearance = part.shape().clearance();
        Length target = diameter.least().plus(clearance.target());
        Uncertainty ofPiston = piston.map(PistonInHand::budget).orElse(Uncertainty.NONE);
        Uncertainty ofHole = request.ofHoles().budget(target, bore.expansion());
        Length together = Uncertainty.ofApart(ofHole.expanded(), ofPiston.expanded());
        Optional<Limits> window = HoneWindow.of(diameter, clearance, together);
        List<Comparison> asItIs = asItIs(hole, diameter, ofPiston, clearance);
        List<Comparison> clean = runs(asItIs) ? List.of() : honedClean(hole, diameter, ofPiston, clearance);
        Length honeTo = hone(hole, target);
        Length boreTo = honeTo.minus(eachWay).minus(bore.honeStock());
        Work work = isLeft(hole, asItIs) || ended(clean, Outcome.OUT) ? Work.AS_IS : byBarOrHone(hole, boreTo);
        List<Check> checks = new ArrayList<>();
        if (work != Work.AS_IS) {
            checks.addAll(HoneWindow.checkTarget(clearance, eachWay, ofHole, ofPiston));
        }
        checks.addAll(asItIs);
        if (stays() && hole.diameters().isEmpty()) {
            checks.add(NOT_MEASURED);
        }
        checks.addAll(clean);
        window.ifPresent(holes -> checks.addAll(ringGaps(holes, ofHole, part)));
        return new HolePlan(
                hole,
                part,
                piston,
                diameter,
                work,
                Optional.of(boreTo).filter(to -> work == Work.REBORE),
                Optional.of(honeTo).filter(to -> work != Work.AS_IS && piston.isPresent()),
                choke,
                together,
                window,
                window.map(holes -> RingGapIn.inAny(holes, widens, ofHole, rings, part.shape()))
                        .orElse(List.of()),
                checks);
    }

    /** As they will be proven once the hole is honed and measured again. */
    private List<Check> ringGaps(Limits holes, Uncertainty ofHole, Piston part) {
        return rings.stream()
                .flatMap(set -> RingChecks.gapsInAny(holes, ofHole, set, part.shape()).stream())
                .toList();
    }

    /**
     * How far a piston in a hole is from its target clearance, doubled so that it stays whole; empty where its hand keeps it out. A hole
     * that is honed for it is honed to target, so that only what it needs beyond that to come out clean counts.
     */
    Optional<Pairing.Deviation> deviation(Hole hole, PistonInHand piston) {
        boolean honed = isHonedFor(hole, piston);
        Length target = piston.target();
        Length off = honed
                ? hone(hole, target).minus(target).doubled()
                : hole.diameters().map(piston::offTarget).orElse(Length.ZERO);
        return Optional.of(new Pairing.Deviation(off, honed))
                .filter(found -> piston.part().hand().goesInto(hole.cylinder().hand()));
    }

    /** Whether the hone goes in for a piston: into every worn hole, and into a finished one that is proven too tight. */
    private boolean isHonedFor(Hole hole, PistonInHand piston) {
        List<Comparison> asItIs = asItIs(
                hole,
                Limits.exactly(piston.diameter()),
                piston.budget(),
                piston.part().shape().clearance());
        return mayBeCut && !runs(asItIs) && (!stays() || hole.diameters().isPresent());
    }

    /** Of all pistons that may go in. */
    private static Limits tolerance(List<Piston> mayGoIn) {
        return Limits.around(mayGoIn.stream()
                .map(piston -> piston.shape().diameter())
                .flatMap(limits -> List.of(limits.least(), limits.greatest()).stream())
                .toList());
    }

    /** The target, or what a hole that is past it needs to come out clean, at its narrower end where it has choke. */
    private Length hone(Hole hole, Length target) {
        return hole.honeCleanUp()
                .map(clean -> clean.plus(eachWay))
                .filter(mean -> mean.isMoreThan(target))
                .orElse(target);
    }

    /** The clearances of a hole that is finished, or is never cut. */
    private List<Comparison> asItIs(Hole hole, Limits piston, Uncertainty ofPiston, ClearanceWindow window) {
        return hole.diameters()
                .filter(measured -> stays())
                .map(measured -> Clearance.check(measured, hole.ofReading(), piston, ofPiston, window))
                .orElse(List.of());
    }

    private boolean stays() {
        return request.condition() == Condition.FINISHED || !mayBeCut;
    }

    /**
     * Whether neither bar nor hone goes in: it runs as it is, its wall is never cut, it is finished and nobody measured it, or what was seen in
     * it is beyond them.
     */
    private boolean isLeft(Hole hole, List<Comparison> asItIs) {
        return runs(asItIs)
                || !mayBeCut
                || (stays() && hole.diameters().isEmpty())
                || hole.survey().isBeyondMachining(mayBeCut);
    }

    /** Whether a finished hole is left as it is: anything but proven too tight. */
    private static boolean runs(List<Comparison> asItIs) {
        return !asItIs.isEmpty() && asItIs.get(0).outcome() != Outcome.OUT;
    }

    /** The greatest clearance a hole to be cut will have at the least: for the largest piston, honed no further than clean. */
    private List<Comparison> honedClean(Hole hole, Limits piston, Uncertainty ofPiston, ClearanceWindow window) {
        Limits largest = Limits.exactly(piston.greatest());
        return hole.honeCleanUp()
                .filter(clean -> mayBeCut)
                .map(clean -> clean.plus(eachWay.doubled()))
                .map(clean -> Clearance.check(Limits.exactly(clean), hole.ofReading(), largest, ofPiston, window))
                .map(both -> List.of(both.get(1).at("honed clean")))
                .orElse(List.of());
    }

    private static boolean ended(List<Comparison> checks, Outcome outcome) {
        return checks.stream().anyMatch(check -> check.outcome() == outcome);
    }

    private static Work byBarOrHone(Hole hole, Length boreTo) {
        boolean tooLittle = hole.diameters()
                .filter(measured -> boreTo.minus(measured.greatest()).isLessThan(hole.uncertainty()))
                .isPresent();
        return tooLittle ? Work.HONE_ONLY : Work.REBORE;
    }
}
