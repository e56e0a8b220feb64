package org.borewright.api.asked;

import org.borewright.api.problem.Fault;
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

    /** Whether a person read the places of its grid again and stands by them; only a grid is ever queried, so that there must be one. */
    public boolean readAgain(Place place) {
        Place checked = place.at("readingsChecked");
        boolean stands = checked.truth().orElse(false);
        if (stands && !place.at("grid").isGiven()) {
            checked.add(Fault.of(
                            ProblemType.WRONG_FORM,
                            checked.pointer(),
                            "It answers a query of a grid, and no grid is given: a single diameter is never queried.")
                    .sent(true)
                    .against("a grid beside it")
                    .wayOut("Leave it out, or send the grid that was read again."));
        }
        return stands;
    }

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
