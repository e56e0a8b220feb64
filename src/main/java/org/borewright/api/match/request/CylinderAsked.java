package org.borewright.api.match.request;

import org.borewright.api.asked.CylinderReader;
import org.borewright.api.asked.CylindersReader;
import org.borewright.api.asked.Opening;
import org.borewright.kit.request.AsFound;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * All that a request tells of one hole.
 *
 * @param survey what was measured of it
 * @param asFound what was seen of its piston and its wall
 */
record CylinderAsked(CylinderSurvey survey, AsFound asFound) {

    /** Reads the holes of a request. */
    static CylindersReader<CylinderAsked> reader(Opening opening) {
        CylinderReader surveys = new CylinderReader(opening.ruler());
        AsFoundReader seen = AsFoundReader.of(opening);
        return new CylindersReader<>(
                place -> new CylinderAsked(surveys.read(place), seen.read(place)),
                name -> new CylinderAsked(CylinderSurvey.unsurveyed(name), AsFound.NOT_TOLD),
                opening.engine());
    }
}
