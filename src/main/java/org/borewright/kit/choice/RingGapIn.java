package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.RingSet;
import org.borewright.fit.RingGap;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/**
 * The gap of one ring in a hole, or in a range of them.
 *
 * @param rings the set it is of
 * @param groove its groove
 * @param gap least and greatest, of the ring as it is made
 * @param fileTo what its ends are filed to at the narrowest place; empty where nothing is to be filed off them
 */
public record RingGapIn(PartNumber rings, String groove, Limits gap, Optional<Limits> fileTo) {

    /** The gaps of all rings of some sets on a piston, from the narrowest to the widest place of a measured hole. */
    public static List<RingGapIn> in(Limits hole, Uncertainty uncertainty, List<RingSet> sets, PistonShape piston) {
        return inAny(hole, hole.width(), uncertainty, sets, piston);
    }

    /**
     * The same in any of the holes that one may become.
     *
     * @param widens from the narrowest to the widest place of each
     */
    public static List<RingGapIn> inAny(
            Limits holes, Length widens, Uncertainty uncertainty, List<RingSet> sets, PistonShape piston) {
        List<RingGapIn> gaps = new ArrayList<>();
        for (RingSet set : sets) {
            for (RingShape ring : set.rings()) {
                Optional<Limits> fileTo = piston.grooves().stream()
                        .filter(groove -> groove.name().equals(ring.groove()))
                        .findFirst()
                        .flatMap(groove -> RingGap.fileTo(holes, widens, uncertainty, ring, groove));
                gaps.add(new RingGapIn(set.number(), ring.groove(), RingGap.in(holes, ring), fileTo));
            }
        }
        return gaps;
    }
}
