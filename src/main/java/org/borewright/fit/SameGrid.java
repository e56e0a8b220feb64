package org.borewright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Query;

/**
 * Two cylinders with the same reading in every place: one was perhaps never measured and the other's note copied. Which of them is the copy
 * nobody can tell from the figures, so both are queried. Source: common practice.
 *
 * <p>A single diameter is not asked about, nor a grid of fewer than three readings, for they agree by chance; nor one whose readings are all
 * equal, for a hole honed straight and round to the same size as its neighbour is good work and no copy.
 */
public final class SameGrid {

    private static final int READINGS_THAT_TELL = 3;

    private SameGrid() {}

    /** The query of a hole whose grid others have too; empty where none has. */
    public static Optional<Query> of(CylinderSurvey survey, List<CylinderSurvey> all) {
        if (!(survey.asRead() instanceof Grid grid)) {
            return Optional.empty();
        }
        List<String> others = new ArrayList<>();
        for (CylinderSurvey other : all) {
            boolean isAnother = !other.cylinder().equals(survey.cylinder());
            if (isAnother && other.asRead() instanceof Grid second && isSame(grid, second)) {
                others.add(other.cylinder());
            }
        }
        return others.isEmpty() || !tells(grid) ? Optional.empty() : Optional.of(Query.sameGridAs(others));
    }

    private static boolean tells(Grid grid) {
        List<Length> readings = grid.readings();
        return readings.size() >= READINGS_THAT_TELL
                && !Limits.around(readings).width().equals(Length.ZERO);
    }

    /** Place by place, in whatever order the axes were written. */
    private static boolean isSame(Grid one, Grid other) {
        if (!one.depths().equals(other.depths())
                || one.axes().size() != other.axes().size()) {
            return false;
        }
        for (int axis = 0; axis < one.axes().size(); axis++) {
            int column = other.axes().indexOf(one.axes().get(axis));
            if (column < 0 || !isSameProfile(one, axis, other, column)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSameProfile(Grid one, int axis, Grid other, int column) {
        for (int depth = 0; depth < one.depths().size(); depth++) {
            if (!one.rows().get(depth).get(axis).equals(other.rows().get(depth).get(column))) {
                return false;
            }
        }
        return true;
    }
}
