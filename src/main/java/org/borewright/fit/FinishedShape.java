package org.borewright.fit;

import java.util.List;
import org.borewright.measure.Length;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Survey;

/** Taper and out-of-round of a freshly honed hole: 0.010 mm each (common practice). */
public final class FinishedShape {

    private static final String TOO_LITTLE_READ = "measure the hole at three depths along two axes at the least";

    private FinishedShape() {}

    /**
     * Both figures against their limit.
     *
     * @param uncertainty of a difference of two readings of one gauge
     */
    public static List<Comparison> check(BoreShape shape, Length uncertainty) {
        Length limit = CommonPractice.finishedShape();
        return List.of(
                Rule.FINISHED_TAPER.atMost("", shape.taper(), limit).within(uncertainty),
                Rule.FINISHED_OUT_OF_ROUND.atMost("", shape.outOfRound(), limit).within(uncertainty));
    }

    /**
     * Both figures of a survey: not known where less was read than three depths along two axes (common practice).
     *
     * @param uncertainty of a difference of two readings of one gauge
     */
    public static List<? extends Check> check(Survey survey, Length uncertainty) {
        return survey instanceof Grid grid && grid.showsShape()
                ? check(BoreShape.of(grid), uncertainty)
                : List.of(
                        Rule.FINISHED_TAPER.unknown("", TOO_LITTLE_READ),
                        Rule.FINISHED_OUT_OF_ROUND.unknown("", TOO_LITTLE_READ));
    }
}
