package org.borewright.api.asked;

import org.borewright.api.problem.ProblemType;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;

/**
 * Reads what was measured of a hole.
 *
 * @param ruler for its diameters
 */
public record SurveyReader(Ruler ruler) {

    /**
     * One diameter or a grid.
     *
     * @param finished whether the hole is finished, and so must have been measured
     */
    public Survey read(Place place, boolean finished) {
        Place diameter = place.at("diameter");
        Place grid = place.at("grid");
        if (diameter.isGiven() && grid.isGiven()) {
            grid.fault(ProblemType.WRONG_FORM, "A single diameter and a grid are both given.", "one of the two");
        }
        if (!diameter.isGiven() && !grid.isGiven() && finished) {
            diameter.need("A finished hole is matched by its diameter, and none is given.");
        }
        return grid.isGiven()
                ? new GridReader(ruler).read(grid)
                : ruler.diameter(diameter).<Survey>map(SingleDiameter::new).orElseGet(NotMeasured::new);
    }
}
