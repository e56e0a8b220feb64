package org.borewright.api.match.answer.hole;

import java.util.List;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.HoleReport;
import org.borewright.kit.WorstShape;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The worst figures of shape of an engine, each with its hole.
 *
 * @param taper the greatest
 * @param outOfRound the greatest
 */
public record WorstShapeAnswer(WorstAnswer taper, WorstAnswer outOfRound) {

    /**
     * One of them.
     *
     * @param cylinder where it is
     * @param figure how much
     */
    public record WorstAnswer(String cylinder, ShownLength figure) {

        private static WorstAnswer of(WorstShape worst, LengthUnit unit) {
            return new WorstAnswer(worst.cylinder(), ShownLength.of(worst.figure(), unit));
        }
    }

    /** Those of these holes; nothing where none has a grid. */
    public static @Nullable WorstShapeAnswer of(List<HoleReport> holes, LengthUnit unit) {
        return WorstShape.taper(holes)
                .flatMap(taper -> WorstShape.outOfRound(holes)
                        .map(outOfRound ->
                                new WorstShapeAnswer(WorstAnswer.of(taper, unit), WorstAnswer.of(outOfRound, unit))))
                .orElse(null);
    }
}
