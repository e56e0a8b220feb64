package org.borewright.kit.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.kit.bench.BenchHold.Reason;
import org.borewright.kit.choice.Block;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Finding.Weight;

/** Gathers what stands in the way on the bench. */
public final class BenchHolds {

    private BenchHolds() {}

    /**
     * What was seen in holes and stands in the way: of a hole beyond machining nothing else, and what is cosmetic never.
     *
     * @param mayBeCut whether bar and hone may touch the walls
     * @param toCut what it is that a finding must be cut out
     * @param left whether a hole is left with the surface it has
     */
    public static List<BenchHold> ofFindings(List<Hole> holes, boolean mayBeCut, Reason toCut, Predicate<Hole> left) {
        List<BenchHold> holds = new ArrayList<>();
        addSeen(holds, Reason.BEYOND_MACHINING, holes, survey -> survey.has(Weight.BEYOND_MACHINING));
        addSeen(
                holds,
                Reason.FINDING_NEVER_CUT,
                holes,
                survey -> survey.isBeyondMachining(mayBeCut) && !survey.has(Weight.BEYOND_MACHINING));
        List<Hole> mended = holes.stream()
                .filter(hole -> !hole.survey().isBeyondMachining(mayBeCut))
                .toList();
        addSeen(holds, Reason.SMEARED_ALUMINIUM, mended, survey -> survey.has(Finding.Kind.SMEARED_ALUMINIUM));
        addSeen(holds, Reason.SLEEVE_LOOSE, mended, survey -> survey.has(Finding.Kind.SLEEVE_LOOSE));
        addSeen(holds, toCut, mended, survey -> survey.has(Weight.MACHINABLE));
        addSeen(holds, Reason.FINISH_POOR, mended.stream().filter(left).toList(), survey -> survey.has(Weight.HONE));
        return holds;
    }

    private static void addSeen(
            List<BenchHold> holds, Reason reason, List<Hole> holes, Predicate<CylinderSurvey> concerned) {
        List<String> cylinders = holes.stream()
                .filter(hole -> concerned.test(hole.survey()))
                .map(Hole::name)
                .toList();
        if (!cylinders.isEmpty()) {
            holds.add(BenchHold.inHoles(reason, cylinders, List.of()));
        }
    }

    /**
     * Before honing, what was seen apart. A piston that is proven wrong stands in the way only while a hole has none.
     *
     * @param past what it is that a hole is too large for its piston
     */
    static List<BenchHold> ofPlan(
            List<Block> blocks, List<PistonInHand> pistons, List<HolePlan> plans, List<Check> masses, Reason past) {
        List<BenchHold> holds = new ArrayList<>(ofSize(blocks));
        boolean complete = plans.stream().allMatch(plan -> plan.piston().isPresent());
        holds.addAll(complete ? List.of() : ofPistons(pistons));
        holds.addAll(ofQueries(plans.stream().map(HolePlan::hole).toList()));
        holds.addAll(ofMasses(masses, complete));
        add(holds, Reason.TARGET_NOT_PROVEN, plans, HolePlan::targets);
        add(holds, past, plans, plan -> plan.isPastWindow() ? plan.ended(Outcome.OUT) : List.of());
        add(holds, Reason.CHECK_OUT, plans, plan -> plan.isPastWindow() ? List.of() : plan.unmended());
        add(holds, Reason.CHECK_UNKNOWN, plans, plan -> plan.ended(Outcome.UNKNOWN));
        add(holds, Reason.CHECK_OPEN, plans, HolePlan::open);
        holds.addAll(ofOpenPistons(
                plans.stream().flatMap(plan -> plan.piston().stream()).toList()));
        return holds;
    }

    private static void add(
            List<BenchHold> holds, Reason reason, List<HolePlan> plans, Function<HolePlan, List<Check>> of) {
        gather(holds, reason, plans, HolePlan::hole, of);
    }

    /** One hold for all holes that have such a check, each check with its hole. */
    public static <T> void gather(
            List<BenchHold> holds, Reason reason, List<T> all, Function<T, Hole> hole, Function<T, List<Check>> of) {
        List<String> cylinders = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        for (T one : all) {
            List<Check> concerned = of.apply(one);
            if (!concerned.isEmpty()) {
                cylinders.add(hole.apply(one).name());
                concerned.forEach(check -> checks.add(placed(check, hole.apply(one))));
            }
        }
        if (!checks.isEmpty()) {
            holds.add(BenchHold.inHoles(reason, cylinders, checks));
        }
    }

    /** Beside the checks of other holes a check must say whose it is. */
    private static Check placed(Check check, Hole hole) {
        return check.at(check.place().isEmpty() ? hole.place() : hole.place() + ", " + check.place());
    }

    /** What stands against the size whatever the holes. */
    public static List<BenchHold> ofSize(List<Block> blocks) {
        return blocks.isEmpty()
                ? List.of()
                : List.of(BenchHold.onSize(
                        blocks.stream().map(block -> block.reason().sentence()).toList(),
                        blocks.stream()
                                .flatMap(block -> block.checks().stream())
                                .toList()));
    }

    /** What is proven against pistons. */
    public static List<BenchHold> ofPistons(List<PistonInHand> pistons) {
        List<Check> out = ended(pistons, Outcome.OUT);
        List<BenchHold> holds = new ArrayList<>();
        addPistons(holds, Reason.WRONG_PISTON, out, rule -> rule == Rule.PISTON_PART);
        addPistons(holds, Reason.PISTON_MISREAD, out, rule -> rule == Rule.PISTON_READING);
        addPistons(holds, Reason.MASS_MISREAD, out, rule -> rule == Rule.PISTON_MASS);
        addPistons(
                holds,
                Reason.PISTON_OUT_OF_TOLERANCE,
                out,
                rule -> rule == Rule.PISTON_LEAST || rule == Rule.PISTON_GREATEST);
        return holds;
    }

    /** The pistons that go in and are too close to call. */
    public static List<BenchHold> ofOpenPistons(List<PistonInHand> fitted) {
        List<BenchHold> holds = new ArrayList<>();
        addPistons(holds, Reason.PISTON_OPEN, ended(fitted, Outcome.TOO_CLOSE), rule -> true);
        return holds;
    }

    private static List<Check> ended(List<PistonInHand> pistons, Outcome outcome) {
        return pistons.stream()
                .flatMap(piston -> Check.ended(piston.checks(), outcome).stream())
                .toList();
    }

    private static void addPistons(List<BenchHold> holds, Reason reason, List<Check> all, Predicate<Rule> rules) {
        List<Check> concerned =
                all.stream().filter(check -> rules.test(check.rule())).toList();
        if (!concerned.isEmpty()) {
            holds.add(BenchHold.onPistons(
                    reason, concerned.stream().map(Check::place).distinct().toList(), concerned));
        }
    }

    /**
     * The masses, where they are too far apart, or not known.
     *
     * @param complete whether every hole has its piston: until then what is not known is only not known yet
     */
    public static List<BenchHold> ofMasses(List<Check> checks, boolean complete) {
        List<BenchHold> holds = new ArrayList<>();
        addChecks(holds, Reason.MASSES_APART, Check.ended(checks, Outcome.OUT));
        addChecks(holds, Reason.CHECK_UNKNOWN, complete ? Check.ended(checks, Outcome.UNKNOWN) : List.of());
        return holds;
    }

    private static void addChecks(List<BenchHold> holds, Reason reason, List<Check> concerned) {
        if (!concerned.isEmpty()) {
            holds.add(BenchHold.of(reason, concerned));
        }
    }

    /** The deck, where it is not proven flat and no skim makes it so. */
    public static List<BenchHold> ofDeck(List<Check> checks) {
        List<BenchHold> holds = new ArrayList<>();
        addChecks(holds, Reason.CHECK_OUT, Check.ended(checks, Outcome.OUT));
        addChecks(holds, Reason.CHECK_OPEN, Check.ended(checks, Outcome.TOO_CLOSE));
        return holds;
    }

    /** One for each hole whose readings are in question. */
    public static List<BenchHold> ofQueries(List<Hole> holes) {
        return holes.stream()
                .filter(hole -> !hole.survey().queries().isEmpty())
                .map(hole -> BenchHold.onQueries(hole.name(), hole.survey().queries()))
                .toList();
    }
}
