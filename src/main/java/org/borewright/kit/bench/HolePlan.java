package org.borewright.kit.bench;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.shape.Choke;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * What to do to one hole, and for which piston.
 *
 * @param hole as surveyed, at 20 °C
 * @param part the piston's number; of several grades the smallest while none is measured
 * @param piston as measured; empty while it is not, and then all else is provisional
 * @param diameter of the piston: as measured, or its tolerance
 * @param work bored and honed, honed alone, or left
 * @param boreTo hone size, of its narrower end, less hone stock; empty when it is not bored
 * @param honeTo piston + target clearance, or as much more as the hole needs to come out clean; the mean of both ends where it has choke;
 *     empty when it is not honed, or no piston is measured yet
 * @param choke how much wider it is honed at the bottom; empty where it is to be straight
 * @param uncertainty of the clearance, hole and piston together
 * @param window the holes in which the clearance is proven; empty where the gauges are too coarse for any
 * @param ringGaps at the ends of the window, of every ring set that goes with the pistons
 * @param checks target, clearance, ring gaps
 */
public record HolePlan(
        Hole hole,
        Piston part,
        Optional<PistonInHand> piston,
        Limits diameter,
        Work work,
        Optional<Length> boreTo,
        Optional<Length> honeTo,
        Optional<Choke> choke,
        Length uncertainty,
        Optional<Limits> window,
        List<RingGapIn> ringGaps,
        List<Check> checks) {

    /** Copies the lists. */
    public HolePlan {
        ringGaps = List.copyOf(ringGaps);
        checks = List.copyOf(checks);
    }

    /** What it is honed to at the top; empty where it is to be straight, or is not honed. */
    public Optional<Length> honeTopTo() {
        return choke.flatMap(window -> honeTo.map(window::atTop));
    }

    /** What it is honed to at the bottom; empty where it is to be straight, or is not honed. */
    public Optional<Length> honeBottomTo() {
        return choke.flatMap(window -> honeTo.map(window::atBottom));
    }

    /** What becomes of the hole, for the list of work. */
    public HoleAtSize fate() {
        return new HoleAtSize(hole.name(), work, Certainty.POSSIBLE, part, Optional.empty());
    }

    /** Whether the hole is proven too large for its piston. */
    boolean isPastWindow() {
        return ended(Outcome.OUT).stream().anyMatch(check -> check.rule() == Rule.CLEARANCE_GREATEST);
    }

    /** What of the target the gauges cannot prove. */
    List<Check> targets() {
        return ended(Outcome.TOO_CLOSE).stream().filter(HolePlan::isOfTarget).toList();
    }

    /** What else is not proven. */
    List<Check> open() {
        return ended(Outcome.TOO_CLOSE).stream()
                .filter(check -> !isOfTarget(check))
                .toList();
    }

    /** What is beyond its limit and stays so: a hole too tight that is to be honed is what the hone is for. */
    List<Check> unmended() {
        return ended(Outcome.OUT).stream()
                .filter(check -> check.rule() != Rule.CLEARANCE_LEAST || work == Work.AS_IS)
                .toList();
    }

    private static boolean isOfTarget(Check check) {
        return check.rule() == Rule.TARGET_LEAST || check.rule() == Rule.TARGET_GREATEST;
    }

    /** The checks that ended so. */
    List<Check> ended(Outcome outcome) {
        return Check.ended(checks, outcome);
    }
}
