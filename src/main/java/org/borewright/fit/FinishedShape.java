package org.borewright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.HonedShape;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.QueriedGrid;
import org.borewright.measure.survey.Survey;

/**
 * Taper and out-of-round of a freshly honed hole, or the choke that the engine maker wants: within what he allows, 0.010 mm where he is
 * silent (common practice).
 */
public final class FinishedShape {

    /** Where a single diameter, or nothing, was read. */
    public static final List<Unchecked> NOT_CHECKED =
            List.of(ShapeShown.notShown(Rule.FINISHED_TAPER), ShapeShown.notShown(Rule.FINISHED_OUT_OF_ROUND));

    private FinishedShape() {}

    /**
     * Both figures against their limit.
     *
     * @param uncertainty of one reading; all of them were taken with one gauge
     */
    public static List<Comparison> check(BoreShape shape, Uncertainty uncertainty, Length limit) {
        return List.of(
                Rule.FINISHED_TAPER.atMost("", shape.taper(), limit).within(uncertainty, Carried.DIFFERENCE),
                Rule.FINISHED_OUT_OF_ROUND
                        .atMost("", shape.outOfRound(), limit)
                        .within(uncertainty, Carried.DIFFERENCE));
    }

    /**
     * The shape of a hole as a grid shows it, whatever its size.
     *
     * @param uncertainty of one reading; all of them were taken with one gauge
     * @param wanted by the engine maker
     */
    public static List<Check> check(Grid grid, Uncertainty uncertainty, HonedShape wanted) {
        List<Comparison> straight = check(BoreShape.of(grid), uncertainty, wanted.uneven());
        List<Check> checks = new ArrayList<>();
        wanted.choke()
                .ifPresentOrElse(
                        choke -> checks.addAll(ChokedShape.check(grid, uncertainty, choke, wanted.uneven())),
                        () -> checks.add(straight.get(0)));
        checks.add(straight.get(1));
        return checks;
    }

    /**
     * The same of a survey: not known where too little was read.
     *
     * @param uncertainty of one reading; empty where nothing was read
     * @param stroke of the engine, half of which is to be read
     */
    public static List<? extends Check> check(
            Survey survey, Optional<Uncertainty> uncertainty, HonedShape wanted, Length stroke) {
        if (survey instanceof Grid grid && ShapeShown.by(survey, stroke)) {
            return check(grid, uncertainty.orElseThrow(), wanted);
        }
        String why = survey instanceof QueriedGrid ? QueriedGrid.READ_AGAIN : ShapeShown.TOO_LITTLE_READ;
        return List.of(Rule.FINISHED_TAPER.unknown("", why), Rule.FINISHED_OUT_OF_ROUND.unknown("", why));
    }
}
