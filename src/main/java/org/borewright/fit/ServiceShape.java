package org.borewright.fit;

import java.util.List;
import org.borewright.measure.Length;
import org.borewright.measure.survey.BoreShape;

/** Taper and out-of-round of a hole that is to run on with new rings. Source: the engine's allowances in service. */
public final class ServiceShape {

    private ServiceShape() {}

    /**
     * Both figures against their allowances.
     *
     * @param uncertainty of a difference of two readings of one gauge
     */
    public static List<Comparison> check(BoreShape shape, Length uncertainty, Length taper, Length outOfRound) {
        return List.of(
                Rule.SERVICE_TAPER.atMost("", shape.taper(), taper).within(uncertainty),
                Rule.SERVICE_OUT_OF_ROUND
                        .atMost("", shape.outOfRound(), outOfRound)
                        .within(uncertainty));
    }
}
