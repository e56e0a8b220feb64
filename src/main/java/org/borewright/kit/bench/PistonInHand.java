package org.borewright.kit.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.MeasuredPiston;
import org.borewright.fit.Outcome;
import org.borewright.fit.PistonPart;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.MassRange;
import org.borewright.kit.choice.Choice;
import org.borewright.measure.Expansion;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Measuring;
import org.borewright.measure.Uncertainty;

/**
 * A piston in hand, measured, and what was asked of it. A bought part is refused only where it is proven wrong (ISO 14253-1): nearer to its
 * tolerance than the uncertainty is neither refused nor passed: its hole is honed to it as measured, and a better gauge decides.
 *
 * @param noted as it was noted
 * @param with with what and how warm it was measured
 * @param alloy how its design grows
 * @param diameter at 20 °C
 * @param budget the uncertainty of the diameter, term by term
 * @param checks number, reading, tolerance, mass; of a reading that is not believed no tolerance is asked
 */
public record PistonInHand(
        PistonReading noted, Measuring with, Expansion alloy, Length diameter, Uncertainty budget, List<Check> checks) {

    /** Copies the checks. */
    public PistonInHand {
        checks = List.copyOf(checks);
    }

    /**
     * A piston as noted, corrected to 20 °C with its own alloy.
     *
     * @param choice the pistons of the size that is asked about
     * @param weighed how it was, where it was
     */
    static PistonInHand of(PistonReading noted, Expansion alloy, Measuring with, Choice choice, Weighed weighed) {
        Length diameter = with.atReference(noted.diameter(), alloy);
        Uncertainty budget = with.budget(diameter, alloy);
        Piston part = noted.part();
        Limits tolerance = part.shape().diameter();
        List<Check> checks = new ArrayList<>(5);
        checks.add(PistonPart.check(
                noted.tag(),
                part.design() + " " + part.size(),
                choice.design().code() + " " + choice.size().label()));
        checks.add(MeasuredPiston.reading(noted.tag(), diameter, tolerance));
        if (Check.allPass(checks.subList(1, 2))) {
            checks.addAll(MeasuredPiston.check(noted.tag(), diameter, budget, tolerance));
        }
        noted.milligrams()
                .ifPresent(mass -> checks.add(
                        MeasuredPiston.mass(noted.tag(), mass, part.shape().mass(), weighed == Weighed.BARE)));
        return new PistonInHand(noted, with, alloy, diameter, budget, checks);
    }

    /** What it is marked with. */
    public String tag() {
        return noted.tag();
    }

    /** The number it was bought by. */
    public Piston part() {
        return noted.part();
    }

    /** The expanded uncertainty of its diameter. */
    public Length uncertainty() {
        return budget.expanded();
    }

    /** Whether anything is computed from its reading. */
    public boolean isBelieved() {
        return checks.stream()
                .noneMatch(check -> check.rule() == Rule.PISTON_READING && check.outcome() == Outcome.OUT);
    }

    /** Whether it may go into an engine: nothing is proven against it. */
    public boolean mayBeFitted() {
        return Check.ended(checks, Outcome.OUT).isEmpty();
    }

    /** Whether it is nearer to its tolerance than its gauge can tell. */
    public boolean isOpen() {
        return !Check.ended(checks, Outcome.TOO_CLOSE).isEmpty();
    }

    /** How far the mean clearance in a finished hole lies from target, doubled so that it stays whole. */
    Length offTarget(Limits hole) {
        return hole.least().plus(hole.greatest()).minus(target().doubled()).absolute();
    }

    /** The hole it has its target clearance in. */
    Length target() {
        return diameter.plus(part().shape().clearance().target());
    }

    /** What it was weighed as; empty where it was not. */
    Optional<MassRange> weight() {
        return noted.milligrams().map(weighed -> new MassRange(weighed, weighed));
    }
}
