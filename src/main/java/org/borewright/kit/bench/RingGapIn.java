package org.borewright.kit.bench;

import java.util.ArrayList;
import java.util.List;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.RingSet;
import org.borewright.fit.RingGap;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.Outfit;
import org.borewright.measure.Limits;

/**
 * The gap of one ring in a range of holes.
 *
 * @param rings the set it is of
 * @param groove its groove
 * @param gap least and greatest
 */
public record RingGapIn(PartNumber rings, String groove, Limits gap) {

    /** The gaps of all rings of some sets. */
    public static List<RingGapIn> of(Limits holes, List<RingSet> sets) {
        List<RingGapIn> gaps = new ArrayList<>();
        for (RingSet set : sets) {
            set.rings().forEach(ring -> gaps.add(new RingGapIn(set.number(), ring.groove(), RingGap.in(holes, ring))));
        }
        return gaps;
    }

    /** The ring sets that go with the pistons of a choice, each once. */
    public static List<RingSet> sets(Choice choice) {
        return choice.outfits().stream().map(Outfit::rings).distinct().toList();
    }
}
