package org.borewright.kit.hole;

import java.util.ArrayList;
import java.util.List;
import org.borewright.fit.OpposedRow;
import org.borewright.fit.SameGrid;
import org.borewright.fit.StrayReading;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Query;

/** Looks over the readings of all holes for slips, before anything is computed from them. */
public final class Examination {

    private Examination() {}

    /** The surveys in their order: a grid with a query is put in question, unless a person read it again and stands by it. */
    public static List<CylinderSurvey> of(List<CylinderSurvey> surveys) {
        List<CylinderSurvey> examined = new ArrayList<>(surveys.size());
        for (CylinderSurvey survey : surveys) {
            List<Query> queries = queries(survey, surveys);
            examined.add(queries.isEmpty() ? survey : survey.queried(queries));
        }
        return examined;
    }

    private static List<Query> queries(CylinderSurvey survey, List<CylinderSurvey> all) {
        if (survey.readingsChecked() || !(survey.asRead() instanceof Grid grid)) {
            return List.of();
        }
        List<Query> queries = new ArrayList<>(StrayReading.in(grid));
        OpposedRow.in(grid).ifPresent(queries::add);
        SameGrid.of(survey, all).ifPresent(queries::add);
        return queries;
    }
}
