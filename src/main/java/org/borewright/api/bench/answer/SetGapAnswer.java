package org.borewright.api.bench.answer;

import java.util.List;
import org.borewright.api.shown.ShownLimits;
import org.borewright.kit.bench.RingGapIn;
import org.borewright.measure.LengthUnit;

/**
 * The gap of one ring.
 *
 * @param ringSet the set it is of
 * @param groove its groove
 * @param gap least and greatest
 */
record SetGapAnswer(String ringSet, String groove, ShownLimits gap) {

    static List<SetGapAnswer> of(List<RingGapIn> gaps, LengthUnit unit) {
        return gaps.stream()
                .map(gap -> new SetGapAnswer(gap.rings().text(), gap.groove(), ShownLimits.ofRange(gap.gap(), unit)))
                .toList();
    }
}
