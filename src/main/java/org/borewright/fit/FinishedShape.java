package org.borewright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.fit.shape.Choke;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.QueriedGrid;
import org.borewright.measure.survey.Survey;

/** Taper and out-of-round of a freshly honed hole: 0.010 mm each (common practice), or the choke that the engine maker wants. */
public final class FinishedShape {

    /** Where a single diameter, or nothing, was read. */
    public static final List<Unchecked> NOT_CHECKED =
            List.of(ShapeShown.notShown(Rule.FINISHED_TAPER), ShapeShown.notShown(Rule.FINISHED_OUT_OF_ROUND));

    private FinishedShape() {}

    /** The most that a good hole widens from its narrowest to its widest place: its choke, and taper and out-of-round besides. */
    public static Length widens(Optional<Choke> choke) {
        return choke.map(Choke::greatestDifference)
                .orElse(Length.ZERO)
                .plus(CommonPractice.finishedShape().doubled());
    }

    /**
     * Both figures against their limit.
     *
     * @param uncertainty of one reading; all of them were taken with one gauge
     */
    public static List<Comparison> check(BoreShape shape, Uncertainty uncertainty) {
        Length limit = CommonPractice.finishedShape();
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
     * @param choke that the engine maker wants; empty where the hole is to be straight
     */
    public static List<Check> check(Grid grid, Uncertainty uncertainty, Optional<Choke> choke) {
        List<Comparison> straight = check(BoreShape.of(grid), uncertainty);
        List<Check> checks = new ArrayList<>();
        choke.ifPresentOrElse(
                window -> checks.addAll(ChokedShape.check(grid, uncertainty, window)),
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
            Survey survey, Optional<Uncertainty> uncertainty, Optional<Choke> choke, Length stroke) {
        if (survey instanceof Grid grid && ShapeShown.by(survey, stroke)) {
            return check(grid, uncertainty.orElseThrow(), choke);
        }
        String why = survey instanceof QueriedGrid ? QueriedGrid.READ_AGAIN : ShapeShown.TOO_LITTLE_READ;
        return List.of(Rule.FINISHED_TAPER.unknown("", why), Rule.FINISHED_OUT_OF_ROUND.unknown("", why));
    }
}
