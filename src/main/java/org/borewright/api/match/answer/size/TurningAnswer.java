package org.borewright.api.match.answer.size;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Size;
import org.borewright.kit.hole.TurningPoint;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * A reading that would change the size of the engine, or whether new rings alone will do.
 *
 * @param cylinder the hole
 * @param read which of its readings
 * @param above as read: beyond it the size named serves no longer, or rings only will no longer do for certain
 * @param atMost as read: down to it a smaller size would serve, or rings only would do
 * @param size the size the engine would then go to; absent where none would be certain, and beside ringsOnly
 * @param ringsOnly how certain rings only would then be; absent where it is the size that would be another
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record TurningAnswer(
        String cylinder,
        String read,
        @Nullable ShownLength above,
        @Nullable ShownLength atMost,
        @Nullable String size,
        @Nullable String ringsOnly) {

    /** The turning points of a match. */
    public static List<TurningAnswer> of(List<TurningPoint> points, LengthUnit unit) {
        return points.stream().map(point -> of(point, unit)).toList();
    }

    private static TurningAnswer of(TurningPoint point, LengthUnit unit) {
        ShownLength limit = ShownLength.of(point.limit(), unit, Flattery.UPPER_LIMIT);
        boolean above = point.side() == TurningPoint.Side.ABOVE;
        return new TurningAnswer(
                point.cylinder(),
                point.read().label(),
                above ? limit : null,
                above ? null : limit,
                point.then() instanceof TurningPoint.Goes goes
                        ? goes.size().map(Size::label).orElse(null)
                        : null,
                point.then() instanceof TurningPoint.Runs runs
                        ? runs.ringsOnly().label()
                        : null);
    }
}
