package org.borewright.fit;

import java.util.List;
import org.borewright.measure.Length;
import org.borewright.measure.survey.BoreShape;

/** Taper and out-of-round of a freshly honed hole: 0.010 mm each (common practice). */
public final class FinishedShape {

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
}
