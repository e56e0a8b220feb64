package org.borewright.api.bench.request;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.api.asked.Place;
import org.borewright.api.asked.Ruler;
import org.borewright.api.asked.SurveyReader;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Wall;

/**
 * Reads what was measured of a hole on the bench.
 *
 * @param ruler for its diameters
 * @param finished whether it must have been measured
 * @param besides what else is said of it
 */
record HoleReader(Ruler ruler, boolean finished, List<String> besides) {

    CylinderSurvey read(Place place) {
        String[] known = Stream.concat(Stream.of("cylinder", "diameter", "grid", "readingsChecked"), besides.stream())
                .toArray(String[]::new);
        if (!place.isObject(known)) {
            if (!place.isGiven()) {
                place.wrongForm("a cylinder");
            }
            return CylinderSurvey.unsurveyed("");
        }
        place.at("cylinder").need("The name of the cylinder is missing.");
        SurveyReader readings = new SurveyReader(ruler);
        return new CylinderSurvey(
                place.at("cylinder").text().orElse(""),
                readings.read(place, finished),
                Wall.UNKNOWN,
                List.of(),
                readings.readAgain(place));
    }
}
