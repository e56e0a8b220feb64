package org.borewright.kit.hole;

import java.util.List;
import org.borewright.catalog.ServiceLimits;
import org.borewright.fit.Check;
import org.borewright.fit.Comparison;
import org.borewright.fit.Rule;
import org.borewright.fit.ServiceShape;
import org.borewright.fit.ShapeShown;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;

/** Taper and out-of-round of a worn hole that is to run on as it is, against what the engine's maker allows; a choke of his counts as straight. */
public final class WornShape {

    /** Where a single diameter, or nothing, was read. */
    public static final List<Check> NOT_CHECKED =
            List.of(ShapeShown.notShown(Rule.SERVICE_TAPER), ShapeShown.notShown(Rule.SERVICE_OUT_OF_ROUND));

    private WornShape() {}

    /** Both figures of a grid that shows the shape, read with one gauge. */
    public static List<Comparison> check(Grid grid, Uncertainty ofReading, ServiceLimits limits) {
        return limits.choke()
                .map(choke -> ServiceShape.checkChoked(grid, choke, ofReading, limits.taper(), limits.outOfRound()))
                .orElseGet(
                        () -> ServiceShape.check(BoreShape.of(grid), ofReading, limits.taper(), limits.outOfRound()));
    }
}
