package org.borewright.api.match.request;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.borewright.api.asked.CylindersReader;
import org.borewright.api.asked.Opening;
import org.borewright.api.asked.Openings;
import org.borewright.catalog.Cylinder;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.NewRings;
import org.borewright.kit.request.PresentSize;
import org.borewright.kit.request.PresentSize.KnownFrom;
import org.borewright.kit.request.Stamp;
import org.borewright.measure.Climate;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.CylinderSurvey;

/** Reads the question of an estimate: a stamp, and whatever else is known of a worn engine. */
@ApplicationScoped
public class EstimateReader {

    private final Openings openings;

    /** Reads what every question begins with through these. */
    public EstimateReader(Openings openings) {
        this.openings = openings;
    }

    /** The question. @throws ProblemException with every fault there is, when it cannot be answered */
    public AskedEstimate read(byte[] body) {
        Opening opening = openings.openInStepsOfEngine(
                body,
                "stamp",
                "temperature",
                "pistonTemperature",
                "gauge",
                "deckFlatness",
                "deckFlatnessUncertainty",
                "deckSkim",
                "skimmedBefore",
                "cylinders");
        Optional<Stamp> stamp = StampReader.stamp(opening.at("stamp"));
        Optional<Stamp.Reading> reading = StampReader.reading(opening, stamp);
        MatchRequest request =
                request(opening, new PresentSize(reading.map(Stamp.Reading::size), KnownFrom.CROWN_STAMP));
        opening.faults().raise();
        return new AskedEstimate(
                new Asked(
                        opening.catalogue(),
                        opening.fits().orElseThrow(),
                        request,
                        opening.unit().orElseThrow()),
                stamp.orElseThrow(),
                reading.orElseThrow());
    }

    private static MatchRequest request(Opening opening, PresentSize stamped) {
        CylindersReader<CylinderAsked> cylinders = CylinderAsked.reader(opening);
        List<CylinderAsked> holes = opening.at("cylinders").isGiven()
                ? cylinders.read(opening.at("cylinders"))
                : opening.engine().stream()
                        .flatMap(engine -> engine.cylinders().stream())
                        .map(EstimateReader::untold)
                        .toList();
        Measuring measuring = opening.ofHoles();
        boolean read = holes.stream().anyMatch(hole -> hole.survey().isRead());
        return new MatchRequest(
                Condition.WORN,
                stamped,
                holes.stream().map(CylinderAsked::survey).toList(),
                measuring.gauge(),
                read || opening.at("temperature").isGiven() ? measuring.climate() : Climate.at(Temperature.REFERENCE),
                DeckReader.read(opening.top(), opening.ruler()),
                Optional.empty(),
                holes.stream().map(CylinderAsked::asFound).toList(),
                NewRings.ANY,
                opening.on());
    }

    private static CylinderAsked untold(Cylinder hole) {
        return new CylinderAsked(CylinderSurvey.unsurveyed(hole.name()), AsFound.NOT_TOLD);
    }
}
