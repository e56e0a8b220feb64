package org.borewright.api.bench.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.kit.bench.RingGapIn;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The gap of one ring.
 *
 * @param ringSet the set it is of
 * @param groove its groove
 * @param gap least and greatest, of the ring as it is made
 * @param fileTo the least gap, which its ends are filed to; absent where nothing is to be filed off them
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record SetGapAnswer(
        String ringSet,
        String groove,
        ShownLimits gap,
        @Nullable ShownLength fileTo) {

    static List<SetGapAnswer> of(List<RingGapIn> gaps, LengthUnit unit) {
        return gaps.stream()
                .map(gap -> new SetGapAnswer(
                        gap.rings().text(),
                        gap.groove(),
                        ShownLimits.ofRange(gap.gap(), unit),
                        gap.fileTo()
                                .map(least -> ShownLength.of(least, unit, Flattery.LOWER_LIMIT))
                                .orElse(null)))
                .toList();
    }
}
