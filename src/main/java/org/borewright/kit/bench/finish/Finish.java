package org.borewright.kit.bench.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.bench.BenchHolds;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.PistonInHand;
import org.borewright.kit.caution.Caution;
import org.borewright.kit.caution.Cautions;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Measuring;

/**
 * Whether finished holes are good with the pistons that go in, as built. The engine passes only if every hole does, all were measured at
 * room temperature, and nothing else stands against it.
 *
 * @param judgement of the engine
 * @param pistons measured, by their tags
 * @param holes in the engine's order
 * @param checks the spread of the masses, the flatness of the deck
 * @param holds what stands in the way; empty exactly when the engine passes
 * @param cautions what must be said
 */
public record Finish(
        Judgement judgement,
        List<PistonInHand> pistons,
        List<JudgedHole> holes,
        List<Check> checks,
        List<BenchHold> holds,
        List<Caution> cautions) {

    /** Judges. */
    public static Finish of(FitTable fits, FinishRequest request) {
        Engine engine = fits.shelf().engine();
        List<PistonInHand> pistons = BenchPlan.pistons(
                fits.shelf().parts().designs(),
                request.choice(),
                request.ofPistons(),
                request.pistons(),
                request.weighed());
        List<Hole> holes = BenchPlan.holes(
                engine, request.holes().stream().map(FittedHole::survey).toList(), request.ofHoles());
        FinishJudge judge = new FinishJudge(request, engine, pistons);
        List<JudgedHole> judged = IntStream.range(0, holes.size())
                .mapToObj(i -> judge.judge(holes.get(i), request.holes().get(i)))
                .toList();
        List<PistonInHand> fitted =
                judged.stream().flatMap(hole -> hole.piston().stream()).toList();
        List<Check> masses = List.of(masses(engine, request, judged));
        List<Check> deck = request.deck().checks(engine.limits());
        List<BenchHold> holds = new ArrayList<>(
                BenchHolds.ofSize(fits.blocks(request.choice(), request.deck().lowered())));
        if (!request.isAtRoomTemperature()) {
            holds.add(BenchHold.of(Reason.NOT_AT_ROOM_TEMPERATURE, List.of()));
        }
        boolean ofEngine = !holds.isEmpty();
        holds.addAll(BenchHolds.ofPistons(fitted));
        holds.addAll(BenchHolds.ofMasses(masses, true));
        holds.addAll(BenchHolds.ofDeck(deck));
        boolean besides = !holds.isEmpty();
        holds.addAll(0, judge.ofFindings(holes));
        holds.addAll(BenchHolds.ofQueries(holes));
        addChecks(holds, judged);
        holds.addAll(BenchHolds.ofOpenPistons(fitted));
        return new Finish(
                besides ? Judgement.HOLD : all(judged),
                pistons,
                ofEngine ? judged.stream().map(JudgedHole::held).toList() : judged,
                Stream.of(masses, deck).flatMap(List::stream).toList(),
                holds,
                cautions(fits, request, judged));
    }

    private static Check masses(Engine engine, FinishRequest request, List<JudgedHole> judged) {
        return request.weighed()
                .spread(
                        judged.stream().map(JudgedHole::piston).toList(),
                        judged.stream().map(hole -> hole.part().shape().mass()).toList(),
                        engine.limits().massSpreadMilligrams());
    }

    private static Judgement all(List<JudgedHole> judged) {
        return judged.stream().map(JudgedHole::judgement).reduce(Judgement.PASS, Judgement::and);
    }

    private static void addChecks(List<BenchHold> holds, List<JudgedHole> judged) {
        gather(holds, Reason.WRONG_PISTON, judged, hole -> hole.ended(Outcome.OUT, rule -> rule == Rule.PISTON_PART));
        gather(holds, Reason.RINGS_NOT_FILED, judged, hole -> hole.holding(rule -> rule == Rule.RING_FILED));
        gather(holds, Reason.CHECK_OUT, judged, hole -> hole.ended(Outcome.OUT, Finish::isOfNoOtherHold));
        gather(holds, Reason.CHECK_UNKNOWN, judged, hole -> hole.ended(Outcome.UNKNOWN));
        gather(holds, Reason.CHECK_OPEN, judged, hole -> hole.ended(Outcome.TOO_CLOSE, Finish::isOfNoOtherHold));
    }

    private static boolean isOfNoOtherHold(Rule rule) {
        return rule != Rule.PISTON_PART && rule != Rule.RING_FILED;
    }

    private static void gather(
            List<BenchHold> holds, Reason reason, List<JudgedHole> judged, Function<JudgedHole, List<Check>> of) {
        BenchHolds.gather(holds, reason, judged, JudgedHole::hole, of);
    }

    private static List<Caution> cautions(FitTable fits, FinishRequest request, List<JudgedHole> holes) {
        List<Measuring> pistons = request.pistons().isEmpty() ? List.of() : List.of(request.ofPistons());
        Cautions cautions = BenchPlan.ofDeck(fits.shelf().engine(), request.deck())
                .ofBuild(fits.shelf().engine(), false)
                .ofTorques(fits.torques())
                .ofInstruments(Optional.of(request.ofHoles()), pistons, request.on());
        holes.forEach(judged -> cautions.ofSurvey(judged.hole().at20()).ofChecks(judged.checks()));
        return cautions.told();
    }
}
