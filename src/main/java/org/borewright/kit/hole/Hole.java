package org.borewright.kit.hole;

import java.util.Optional;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Expansion;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Survey;

/**
 * One hole of the engine as it was surveyed, corrected to 20 °C.
 *
 * @param cylinder its place in the engine
 * @param survey what was noted
 * @param at20 the diameters at 20 °C
 * @param uncertainty of one diameter, term by term; empty when nothing was measured
 * @param whenNew the size it had when new, and what tells
 */
public record Hole(
        Cylinder cylinder,
        CylinderSurvey survey,
        Survey at20,
        Optional<Uncertainty> uncertainty,
        Optional<WhenNew> whenNew) {

    /** The hole of a request, its readings corrected with the α of the engine's wall. */
    public static Hole of(
            Engine engine,
            Cylinder cylinder,
            CylinderSurvey survey,
            MatchRequest request,
            Optional<Length> presentLeast) {
        Expansion wall = engine.bore().expansion();
        Survey at20 = survey.asRead()
                .map(reading -> wall.atReference(reading, request.climate().temperature()));
        Optional<Uncertainty> uncertainty = at20.largest()
                .or(() -> survey.wall().reach().map(reach -> reach.radius().doubled()))
                .map(diameter -> Uncertainty.of(diameter, request.gauge(), request.climate(), wall));
        Optional<Length> unworn = survey.wall()
                .unworn()
                .map(reading -> wall.atReference(reading, request.climate().temperature()));
        return new Hole(
                cylinder,
                survey,
                at20,
                uncertainty,
                WhenNew.of(survey.wall().lastFinish(), unworn, presentLeast, at20));
    }

    /** Its name. */
    public String name() {
        return cylinder.name();
    }

    /** The expanded uncertainty of one diameter; zero when nothing was measured. */
    public Length expandedUncertainty() {
        return uncertainty.map(Uncertainty::expanded).orElse(Length.ZERO);
    }

    /** The smallest and the largest diameter; empty when nothing was measured. */
    public Optional<Limits> diameters() {
        return at20.smallest().flatMap(least -> at20.largest().map(greatest -> new Limits(least, greatest)));
    }

    /** Wear: the largest diameter less the size when new; empty when either is not known. */
    public Optional<Length> wear() {
        return at20.largest().flatMap(largest -> whenNew.map(known -> largest.minus(known.diameter())));
    }
}
