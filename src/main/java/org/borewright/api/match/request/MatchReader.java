package org.borewright.api.match.request;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collections;
import java.util.List;
import org.borewright.api.asked.Opening;
import org.borewright.api.asked.Openings;
import org.borewright.api.asked.Place;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.NewRings;
import org.borewright.kit.request.PresentSize;
import org.borewright.kit.request.PresentSize.KnownFrom;
import org.borewright.measure.Measuring;

/** Reads the question of a match out of a body of JSON. */
@ApplicationScoped
public class MatchReader {

    private final Openings openings;

    /** A reader of questions that begin so. */
    public MatchReader(Openings openings) {
        this.openings = openings;
    }

    /** The question. @throws ProblemException with every fault there is, when it cannot be answered */
    public Asked read(byte[] body) {
        Opening opening = openings.open(
                body,
                "condition",
                "presentSize",
                "temperature",
                "pistonTemperature",
                "gauge",
                "deckFlatness",
                "deckFlatnessUncertainty",
                "deckSkim",
                "skimmedBefore",
                "askedSize",
                "cylinders",
                "ringsFiled");
        MatchRequest request = request(opening);
        opening.faults().raise();
        return new Asked(
                opening.catalogue(),
                opening.fits().orElseThrow(),
                request,
                opening.unit().orElseThrow());
    }

    private static MatchRequest request(Opening opening) {
        Condition condition = condition(opening.at("condition"));
        Measuring measuring = opening.ofHoles();
        List<CylinderAsked> holes = CylinderAsked.reader(opening).read(opening.at("cylinders"));
        return new MatchRequest(
                condition,
                presentSize(opening),
                holes.stream().map(CylinderAsked::survey).toList(),
                measuring.gauge(),
                measuring.climate(),
                DeckReader.read(opening.top(), opening.ruler()),
                opening.size(opening.at("askedSize")),
                holes.stream().map(CylinderAsked::asFound).toList(),
                new NewRings(Collections.emptySet(), opening.at("ringsFiled").truth()),
                opening.on());
    }

    private static Condition condition(Place place) {
        place.need("It is not said whether the holes are worn or finished.");
        return place.word(List.of(Condition.values()), Condition::label).orElse(Condition.WORN);
    }

    private static PresentSize presentSize(Opening opening) {
        Place place = opening.at("presentSize");
        if (!place.isObject("size", "knownFrom")) {
            return PresentSize.NOT_KNOWN;
        }
        place.at("size").need("The present size is missing; leave presentSize out when nobody knows it.");
        place.at("knownFrom").need("It is not said where the present size is known from.");
        return new PresentSize(
                opening.size(place.at("size")),
                place.at("knownFrom")
                        .word(List.of(KnownFrom.values()), KnownFrom::label)
                        .orElse(KnownFrom.HEARSAY));
    }
}
