package org.borewright.api.match.answer.hole;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.shown.ShownLimits;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The gap of one ring.
 *
 * @param ringSet the set it is of
 * @param groove its groove
 * @param gap least and greatest, of the ring as it is made
 * @param fileTo what its ends are filed to at the narrowest place; absent where nothing is to be filed off them
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RingGapAnswer(
        String ringSet,
        String groove,
        ShownLimits gap,
        @Nullable ShownLimits fileTo) {

    /** The gaps of some rings. */
    public static List<RingGapAnswer> of(List<RingGapIn> gaps, LengthUnit unit) {
        return gaps.stream()
                .map(gap -> new RingGapAnswer(
                        gap.rings().text(),
                        gap.groove(),
                        ShownLimits.ofRange(gap.gap(), unit),
                        gap.fileTo().map(limits -> ShownLimits.of(limits, unit)).orElse(null)))
                .toList();
    }
}
