package org.borewright.fit;

import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/**
 * The gap of a ring in the hole: the gap in its gauge + π × (hole − gauge). Source: ISO 6621-2, which defines the closed gap in a
 * gauge of nominal bore; a standard ring in a +0.25 mm hole gains 0.785 mm.
 */
public final class RingGap {

    private RingGap() {}

    /** The least gap, in the smallest hole, rounded down; and the greatest, in the largest, rounded up. */
    public static Limits in(Limits hole, RingShape ring) {
        long least =
                (long) Math.floor(Math.PI * hole.least().minus(ring.gaugeBore()).nanometres());
        long greatest = (long)
                Math.ceil(Math.PI * hole.greatest().minus(ring.gaugeBore()).nanometres());
        return new Limits(
                ring.gap().least().plus(Length.ofNanometres(least)),
                ring.gap().greatest().plus(Length.ofNanometres(greatest)));
    }

    /**
     * Both gaps against the groove's limits in whichever hole of a range, π times as uncertain as the hole. A ring made to be filed may be
     * short by its allowance.
     */
    public static List<Comparison> check(Limits holes, Uncertainty uncertainty, RingShape ring, GrooveShape groove) {
        Limits gap = in(holes, ring);
        return List.of(
                least(gap.least(), ring, groove, uncertainty),
                greatest(Rule.RING_GAP_GREATEST, gap.greatest(), groove, uncertainty));
    }

    /** The same in one hole, from its narrowest place to its widest: filed to the least at the one, a ring gapes by more at the other. */
    public static List<Comparison> checkInHole(
            Limits hole, Uncertainty uncertainty, RingShape ring, GrooveShape groove) {
        return inOne(Rule.RING_GAP_GREATEST, hole, uncertainty, ring, groove);
    }

    /** The same in a worn hole that is to run on: where the gap of the right ring is too wide, the hole is. */
    public static List<Comparison> checkInService(
            Limits hole, Uncertainty uncertainty, RingShape ring, GrooveShape groove) {
        return inOne(Rule.SERVICE_RING_GAP, hole, uncertainty, ring, groove);
    }

    /**
     * What the ends are filed to at the narrowest place of the hole: the least gap, and what leaves it proven no more than the greatest at
     * the widest. Empty where the gap is proven as the ring was made, and where no filing helps.
     *
     * @param holes that it may be
     * @param widens from the narrowest to the widest place of each
     */
    public static Optional<Limits> fileTo(
            Limits holes, Length widens, Uncertainty uncertainty, RingShape ring, GrooveShape groove) {
        Limits gap = groove.gap();
        Length most = gap.greatest().minus(gained(widens)).minus(gained(uncertainty.expanded()));
        return Optional.of(least(in(holes, ring).least(), ring, groove, uncertainty))
                .filter(least -> least.rule() == Rule.RING_GAP_TO_FILE && least.outcome() != Outcome.OUT)
                .filter(least -> !most.isLessThan(gap.least()))
                .map(least -> new Limits(gap.least(), most));
    }

    /**
     * A ring that must be filed for its hole: the word of whoever filed it, for no reading of the hole tells; without it the gap
     * that the ring was made with counts.
     */
    public static Check checkFiled(
            Limits hole, Uncertainty uncertainty, RingShape ring, GrooveShape groove, boolean isFiled) {
        return isFiled
                ? new Suitability(
                        Rule.RING_FILED, groove.name(), "filed", "filed at the narrowest place of its hole", true)
                : Rule.RING_FILED
                        .atLeast(
                                groove.name(),
                                in(hole, ring).least(),
                                groove.gap().least())
                        .within(uncertainty, Carried.PI_TIMES);
    }

    private static List<Comparison> inOne(
            Rule rule, Limits hole, Uncertainty uncertainty, RingShape ring, GrooveShape groove) {
        Limits gap = in(hole, ring);
        Comparison least = least(gap.least(), ring, groove, uncertainty);
        Length filed = groove.gap().least().plus(gained(hole.width()));
        Length widest = least.rule() == Rule.RING_GAP_TO_FILE ? gap.greatest().max(filed) : gap.greatest();
        return List.of(least, greatest(rule, widest, groove, uncertainty));
    }

    private static Comparison greatest(Rule rule, Length gap, GrooveShape groove, Uncertainty uncertainty) {
        return rule.atMost(groove.name(), gap, groove.gap().greatest()).within(uncertainty, Carried.PI_TIMES);
    }

    /** What a gap gains by so much more diameter, rounded up. */
    private static Length gained(Length diameter) {
        return Length.ofNanometres((long) Math.ceil(Math.PI * diameter.nanometres()));
    }

    /** A ring made to be filed need not be proven wide enough: what is too close to call is filed as well. */
    private static Comparison least(Length gap, RingShape ring, GrooveShape groove, Uncertainty uncertainty) {
        Length limit = groove.gap().least();
        Comparison asMade =
                Rule.RING_GAP_LEAST.atLeast(groove.name(), gap, limit).within(uncertainty, Carried.PI_TIMES);
        boolean madeToBeFiled = ring.fileAllowance().isMoreThan(Length.ZERO);
        return madeToBeFiled && asMade.outcome() != Outcome.IN
                ? Rule.RING_GAP_TO_FILE
                        .atMost(groove.name(), toBeFiled(gap, limit), ring.fileAllowance())
                        .within(uncertainty, Carried.PI_TIMES)
                : asMade;
    }

    private static Length toBeFiled(Length gap, Length limit) {
        return gap.isLessThan(limit) ? limit.minus(gap) : Length.ZERO;
    }
}
