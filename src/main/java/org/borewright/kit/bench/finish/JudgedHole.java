package org.borewright.kit.bench.finish;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.kit.bench.PistonInHand;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.BoreShape;

/**
 * A finished hole with its piston, judged.
 *
 * @param hole as surveyed, at 20 °C
 * @param part the piston's number
 * @param piston as measured; empty where its tolerance is reckoned with
 * @param clearance at its worst both ways; empty where it cannot be known
 * @param shape taper and out-of-round; empty without a grid
 * @param ringGaps at the smallest and the largest place
 * @param checks the piston's place, clearance, shape, ring gaps
 * @param judgement of them all
 */
public record JudgedHole(
        Hole hole,
        Piston part,
        Optional<PistonInHand> piston,
        Optional<Limits> clearance,
        Optional<BoreShape> shape,
        List<RingGapIn> ringGaps,
        List<Check> checks,
        Judgement judgement) {

    /** Copies the lists. */
    public JudgedHole {
        ringGaps = List.copyOf(ringGaps);
        checks = List.copyOf(checks);
    }

    /** The same hole where something stands against the whole engine: no hole of it passes. */
    JudgedHole held() {
        return new JudgedHole(hole, part, piston, clearance, shape, ringGaps, checks, Judgement.HOLD);
    }

    /** The checks that ended so. */
    List<Check> ended(Outcome outcome) {
        return Check.ended(checks, outcome);
    }

    /** The checks of some rules that ended so. */
    List<Check> ended(Outcome outcome, Predicate<Rule> rules) {
        return of(ended(outcome), rules);
    }

    /** The checks of some rules that stand in the way. */
    List<Check> holding(Predicate<Rule> rules) {
        return of(Check.holding(checks), rules);
    }

    private static List<Check> of(List<Check> checks, Predicate<Rule> rules) {
        return checks.stream().filter(check -> rules.test(check.rule())).toList();
    }
}
