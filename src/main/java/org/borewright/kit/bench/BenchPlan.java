package org.borewright.kit.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.fit.Check;
import org.borewright.fit.shape.MassRange;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.caution.Cautions;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Examination;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.Work;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * What to do before honing: which piston to which hole, what to bore and hone to, in what window it is good; or what stands in the way.
 *
 * @param readiness whether the hone may go in
 * @param pistons in hand, by their tags: shorter before longer, then as they sort
 * @param holes in the engine's order
 * @param checks the spread of the masses, the flatness of the deck
 * @param holds what stands in the way
 * @param next the size that would save holes too large for their pistons; empty when none is, or none would
 * @param cautions what must be said
 */
public record BenchPlan(
        Readiness readiness,
        List<PistonInHand> pistons,
        List<HolePlan> holes,
        List<Check> checks,
        List<BenchHold> holds,
        Optional<NextSize> next,
        List<Caution> cautions) {

    /** Answers a question. */
    public static BenchPlan of(FitTable fits, BenchRequest request) {
        Engine engine = fits.shelf().engine();
        List<PistonInHand> pistons = pistons(
                fits.shelf().parts().designs(),
                request.choice(),
                request.ofPistons(),
                request.pistons(),
                request.weighed());
        List<Hole> holes = holes(engine, request.cylinders(), request.ofHoles());
        List<HolePlan> plans = plans(engine, request, holes, pistons);
        List<Check> masses = List.of(masses(engine, request, plans));
        List<Check> deck = request.deck().checks(engine.limits());
        List<BenchHold> holds = new ArrayList<>(seen(engine, plans));
        Optional<NextSize> next = plans.stream().anyMatch(HolePlan::isPastWindow)
                ? NextSize.after(request, fits, holes)
                : Optional.empty();
        Reason past = next.isPresent() ? Reason.PAST_WINDOW : Reason.PAST_LAST_SIZE;
        holds.addAll(BenchHolds.ofPlan(
                fits.blocks(request.choice(), request.deck().lowered()), pistons, plans, masses, past));
        holds.addAll(BenchHolds.ofDeck(deck));
        return new BenchPlan(
                readiness(holds, plans),
                pistons,
                plans,
                Stream.of(masses, deck).flatMap(List::stream).toList(),
                holds,
                next,
                cautions(fits, request, plans));
    }

    /** The pistons that go into no hole. */
    public List<PistonInHand> spare() {
        List<PistonInHand> spare = new ArrayList<>(pistons);
        holes.forEach(plan -> plan.piston().ifPresent(spare::remove));
        return spare;
    }

    /** Those of them that are proven wrong; where every hole has its piston they stand in nobody's way. */
    public List<PistonInHand> setAside() {
        return spare().stream().filter(piston -> !piston.mayBeFitted()).toList();
    }

    /** The pistons as measured, by tag. */
    public static List<PistonInHand> pistons(
            List<PistonDesign> designs, Choice choice, Measuring with, List<PistonReading> noted, Weighed weighed) {
        Map<String, PistonDesign> byCode = new TreeMap<>();
        designs.forEach(design -> byCode.put(design.code(), design));
        return noted.stream()
                .sorted(Comparator.comparing(
                                (PistonReading piston) -> piston.tag().length())
                        .thenComparing(PistonReading::tag))
                .map(piston -> {
                    PistonDesign design = byCode.getOrDefault(piston.part().design(), choice.design());
                    return PistonInHand.of(piston, design.expansion(), with, choice, weighed);
                })
                .toList();
    }

    /** The holes at 20 °C, their readings looked over for slips. */
    public static List<Hole> holes(Engine engine, List<CylinderSurvey> surveys, Measuring with) {
        List<CylinderSurvey> examined = Examination.of(surveys);
        List<Hole> holes = new ArrayList<>(examined.size());
        for (Cylinder cylinder : engine.cylinders()) {
            holes.add(Hole.of(engine.bore(), cylinder, examined.get(holes.size()), with, Optional.empty()));
        }
        return holes;
    }

    private static List<HolePlan> plans(
            Engine engine, BenchRequest request, List<Hole> holes, List<PistonInHand> pistons) {
        List<PistonInHand> fit =
                pistons.stream().filter(PistonInHand::mayBeFitted).toList();
        HolePlanner planner = new HolePlanner(request, engine);
        List<Optional<Integer>> paired = Pairing.of(holes.stream()
                .map(hole -> fit.stream()
                        .map(piston -> planner.deviation(hole, piston))
                        .toList())
                .toList());
        return IntStream.range(0, holes.size())
                .mapToObj(i -> {
                    List<Piston> mayGoIn = request.choice().pistons().get(i);
                    return planner.plan(holes.get(i), mayGoIn, paired.get(i).map(fit::get));
                })
                .toList();
    }

    /** A poor surface is settled where the hone goes in; a hole that is past its window is held for that. */
    private static List<BenchHold> seen(Engine engine, List<HolePlan> plans) {
        List<Hole> left = plans.stream()
                .filter(plan -> plan.work() == Work.AS_IS && !plan.isPastWindow())
                .map(HolePlan::hole)
                .toList();
        return BenchHolds.ofFindings(
                plans.stream().map(HolePlan::hole).toList(),
                engine.build().construction().mayBeBored(),
                BenchHold.Reason.CLEAN_UP_NOT_JUDGED,
                left::contains);
    }

    private static Check masses(Engine engine, BenchRequest request, List<HolePlan> plans) {
        List<MassRange> listed = IntStream.range(0, plans.size())
                .mapToObj(i -> plans.get(i)
                        .piston()
                        .map(piston -> piston.part().shape().mass())
                        .orElseGet(() -> MassRange.around(request.choice().pistons().get(i).stream()
                                .map(piston -> piston.shape().mass())
                                .toList())))
                .toList();
        return request.weighed()
                .spread(
                        plans.stream().map(HolePlan::piston).toList(),
                        listed,
                        engine.limits().massSpreadMilligrams());
    }

    private static Readiness readiness(List<BenchHold> holds, List<HolePlan> plans) {
        if (holds.stream().anyMatch(hold -> hold.reason() != BenchHold.Reason.PISTON_OPEN)) {
            return Readiness.HOLD;
        }
        if (!holds.isEmpty()) {
            return Readiness.TOO_CLOSE;
        }
        return plans.stream().anyMatch(plan -> plan.piston().isEmpty()) ? Readiness.PROVISIONAL : Readiness.READY;
    }

    /** What must be said of the deck, and stands on every answer. */
    public static Cautions ofDeck(Engine engine, Deck deck) {
        return new Cautions()
                .ofLowered(engine, deck.lowered())
                .when(deck.isToBeSkimmed() && deck.skimmedBefore().isEmpty(), Caution.EARLIER_SKIMS_NOT_STATED)
                .when(deck.isToBeSkimmed() && deck.isFlat(engine.limits()), Caution.SKIM_NOT_NEEDED);
    }

    private static List<Caution> cautions(FitTable fits, BenchRequest request, List<HolePlan> plans) {
        List<Measuring> pistons = request.pistons().isEmpty() ? List.of() : List.of(request.ofPistons());
        Cautions cautions = ofDeck(fits.shelf().engine(), request.deck())
                .ofBuild(fits.shelf().engine(), plans.stream().anyMatch(plan -> plan.work() != Work.AS_IS))
                .ofTorques(fits.torques())
                .when(
                        request.condition() == Condition.WORN
                                && plans.stream().anyMatch(plan -> plan.work() == Work.REBORE),
                        Caution.CLEAN_UP_NOT_ASKED)
                .ofInstruments(Optional.of(request.ofHoles()), pistons, request.on());
        plans.forEach(plan -> cautions.ofSurvey(plan.hole().at20()).ofChecks(plan.checks()));
        return cautions.told();
    }
}
