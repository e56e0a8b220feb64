package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

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

    /** Both gaps against the groove's limits; a ring made to be filed may be short by its allowance. */
    public static List<Comparison> check(Limits hole, Length uncertainty, RingShape ring, GrooveShape groove) {
        Limits gap = in(hole, ring);
        Length inGap = Length.ofNanometres((long) Math.ceil(Math.PI * uncertainty.nanometres()));
        return List.of(
                least(gap.least(), ring, groove).within(inGap),
                Rule.RING_GAP_GREATEST
                        .atMost(groove.name(), gap.greatest(), groove.gap().greatest())
                        .within(inGap));
    }

    private static Comparison least(Length gap, RingShape ring, GrooveShape groove) {
        Length limit = groove.gap().least();
        boolean madeToBeFiled = ring.fileAllowance().isMoreThan(Length.ZERO);
        return gap.isLessThan(limit) && madeToBeFiled
                ? Rule.RING_GAP_TO_FILE.atLeast(groove.name(), gap, limit.minus(ring.fileAllowance()))
                : Rule.RING_GAP_LEAST.atLeast(groove.name(), gap, limit);
    }
}
