package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Size;
import org.borewright.kit.FinishedHole;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * Where one finished hole stands among the sizes.
 *
 * @param cylinder the hole
 * @param size the size whose window holds it nearest to target, proven before not proven; absent between sizes
 * @param pistons the pistons of that size whose windows hold it, the best fitting first; empty between sizes
 * @param certainty whether the readings prove that the window holds it; no between sizes
 * @param otherSizes other sizes whose windows hold it too
 * @param tooLooseFor between sizes: the smaller size and by how much it is too loose for it
 * @param toGo between sizes: the larger size and how much metal to it
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record FinishedHoleAnswer(
        String cylinder,
        @Nullable String size,
        List<String> pistons,
        String certainty,
        List<String> otherSizes,
        @Nullable GapAnswer tooLooseFor,
        @Nullable GapAnswer toGo) {

    /**
     * A size and how far away it is.
     *
     * @param size the size
     * @param by the distance on the diameter
     */
    public record GapAnswer(String size, ShownLength by) {

        static GapAnswer of(FinishedHole.Gap gap, LengthUnit unit) {
            return new GapAnswer(gap.size().label(), ShownLength.of(gap.by(), unit));
        }
    }

    static FinishedHoleAnswer of(FinishedHole hole, LengthUnit unit) {
        return new FinishedHoleAnswer(
                hole.cylinder(),
                hole.size().map(Size::label).orElse(null),
                hole.pistons().stream().map(piston -> piston.number().text()).toList(),
                hole.certainty().label(),
                hole.others().stream().map(Size::label).toList(),
                hole.tooLooseFor().map(gap -> GapAnswer.of(gap, unit)).orElse(null),
                hole.toGo().map(gap -> GapAnswer.of(gap, unit)).orElse(null));
    }
}
