package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.Choke;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;

/** Taper and out-of-round of a hole that is to run on with new rings. Source: the engine's allowances in service. */
public final class ServiceShape {

    private ServiceShape() {}

    /**
     * Both figures of a hole that was honed with choke: as taper counts how far it is beyond it.
     *
     * @param uncertainty of one reading; all of them were taken with one gauge
     */
    public static List<Comparison> checkChoked(
            Grid grid, Choke choke, Uncertainty uncertainty, Length taper, Length outOfRound) {
        return List.of(
                Rule.SERVICE_TAPER
                        .atMost("beyond its choke", ChokedShape.beyond(grid, choke), taper)
                        .within(uncertainty, Carried.DIFFERENCE),
                check(BoreShape.of(grid), uncertainty, taper, outOfRound).get(1));
    }

    /**
     * Both figures against their allowances.
     *
     * @param uncertainty of one reading; all of them were taken with one gauge
     */
    public static List<Comparison> check(BoreShape shape, Uncertainty uncertainty, Length taper, Length outOfRound) {
        return List.of(
                Rule.SERVICE_TAPER.atMost("", shape.taper(), taper).within(uncertainty, Carried.DIFFERENCE),
                Rule.SERVICE_OUT_OF_ROUND
                        .atMost("", shape.outOfRound(), outOfRound)
                        .within(uncertainty, Carried.DIFFERENCE));
    }
}
