package org.borewright.kit.bench.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Check;
import org.borewright.fit.Clearance;
import org.borewright.fit.FinishedShape;
import org.borewright.fit.Outcome;
import org.borewright.fit.PistonPart;
import org.borewright.fit.Rule;
import org.borewright.fit.Unchecked;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchHolds;
import org.borewright.kit.bench.PistonInHand;
import org.borewright.kit.choice.RingChecks;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.QueriedGrid;

/** Judges each finished hole with its piston. What was not measured is not known, and never a pass. */
final class FinishJudge {

    private final FinishRequest request;
    private final Engine engine;
    private final Map<String, PistonInHand> byTag = new TreeMap<>();

    FinishJudge(FinishRequest request, Engine engine, List<PistonInHand> pistons) {
        this.request = request;
        this.engine = engine;
        pistons.forEach(piston -> byTag.put(piston.tag(), piston));
    }

    JudgedHole judge(Hole hole, FittedHole fitted) {
        Optional<PistonInHand> piston = fitted.tag().map(byTag::get);
        Piston part = fitted.part();
        Limits diameter = piston.map(measured -> Limits.exactly(measured.diameter()))
                .orElse(part.shape().diameter());
        boolean believed = piston.map(PistonInHand::isBelieved).orElse(true);
        Optional<Limits> measured = hole.diameters().filter(any -> believed);
        List<Check> checks = new ArrayList<>();
        checks.add(place(hole, part));
        checks.addAll(clearances(hole, part, diameter, piston));
        checks.addAll(FinishedShape.check(
                hole.at20(),
                hole.budget(),
                engine.limits().honed(),
                engine.deck().stroke()));
        checks.addAll(ringGaps(hole, part));
        return new JudgedHole(
                hole,
                part,
                piston,
                measured.map(holes -> holes.minus(diameter)),
                hole.at20() instanceof Grid grid ? Optional.of(BoreShape.of(grid)) : Optional.empty(),
                hole.diameters()
                        .map(holes -> RingGapIn.in(
                                holes,
                                hole.ofReading(),
                                request.rings().stream().toList(),
                                part.shape()))
                        .orElse(List.of()),
                checks,
                ofFindings(List.of(hole)).isEmpty() ? judgement(checks, piston) : Judgement.HOLD);
    }

    /** What was seen in finished holes and stands in the way. */
    List<BenchHold> ofFindings(List<Hole> holes) {
        return BenchHolds.ofFindings(
                holes, engine.build().construction().mayBeBored(), BenchHold.Reason.DID_NOT_CLEAN_UP, finished -> true);
    }

    private Check place(Hole hole, Piston part) {
        Hand hand = hole.cylinder().hand();
        String rightHand = part.hand().goesInto(hand) ? part.hand().label() : hand.label();
        return PistonPart.check(
                "",
                part.design() + " " + part.size() + ", " + part.hand().label(),
                request.choice().design().code() + " " + request.choice().size().label() + ", " + rightHand);
    }

    private static List<? extends Check> clearances(
            Hole hole, Piston part, Limits diameter, Optional<PistonInHand> piston) {
        if (piston.filter(measured -> !measured.isBelieved()).isPresent()) {
            return List.of(unknown(Rule.CLEARANCE_LEAST, "nothing is computed from this reading of the piston"));
        }
        return hole.diameters()
                .<List<? extends Check>>map(holes -> Clearance.check(
                        holes,
                        hole.ofReading(),
                        diameter,
                        piston.map(PistonInHand::budget).orElse(Uncertainty.NONE),
                        part.shape().clearance()))
                .orElseGet(() -> List.of(unread(Rule.CLEARANCE_LEAST, hole)));
    }

    private List<Check> ringGaps(Hole hole, Piston part) {
        if (request.rings().isEmpty()) {
            return List.of(unknown(Rule.RING_GAP_LEAST, "no ring set fits these pistons, or none was named"));
        }
        return hole.diameters()
                .map(holes -> ringGaps(holes, hole.ofReading(), request.rings().get(), part))
                .orElseGet(() -> List.of(unread(Rule.RING_GAP_LEAST, hole)));
    }

    private List<Check> ringGaps(Limits holes, Uncertainty ofReading, RingSet rings, Piston part) {
        List<Check> checks = new ArrayList<>(RingChecks.gapsIn(holes, ofReading, rings, part.shape()));
        checks.addAll(RingChecks.filedIn(holes, ofReading, rings, part.shape(), request.ringsFiled()));
        return checks;
    }

    private static Check unread(Rule rule, Hole hole) {
        return unknown(rule, hole.at20() instanceof QueriedGrid ? QueriedGrid.READ_AGAIN : "the hole was not measured");
    }

    private static Check unknown(Rule rule, String why) {
        return new Unchecked(rule, "", Outcome.UNKNOWN, why);
    }

    private static Judgement judgement(List<Check> checks, Optional<PistonInHand> piston) {
        if (piston.filter(measured -> !measured.mayBeFitted()).isPresent()
                || !Check.ended(checks, Outcome.OUT).isEmpty()
                || !Check.ended(checks, Outcome.UNKNOWN).isEmpty()
                || Check.holding(checks).stream().anyMatch(check -> check.rule() == Rule.RING_FILED)) {
            return Judgement.HOLD;
        }
        return Check.ended(checks, Outcome.TOO_CLOSE).isEmpty()
                        && piston.filter(PistonInHand::isOpen).isEmpty()
                ? Judgement.PASS
                : Judgement.TOO_CLOSE;
    }
}
