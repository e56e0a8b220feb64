package org.borewright.api.bench.request;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.borewright.api.asked.CylindersReader;
import org.borewright.api.asked.Opening;
import org.borewright.api.asked.Openings;
import org.borewright.api.asked.Place;
import org.borewright.api.asked.SurveyReader;
import org.borewright.api.match.request.DeckReader;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.Weighed;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.CylinderSurvey;

/** Reads what is asked before honing. */
@ApplicationScoped
public class BenchReader {

    private static final String[] MEMBERS = {
        "size",
        "design",
        "condition",
        "temperature",
        "gauge",
        "pistonTemperature",
        "pistonGauge",
        "pistons",
        "weighed",
        "cylinders",
        "deckFlatness",
        "deckFlatnessUncertainty",
        "deckSkim",
        "skimmedBefore"
    };

    private final Openings openings;

    /** A reader of questions that begin so. */
    public BenchReader(Openings openings) {
        this.openings = openings;
    }

    /** The question. @throws ProblemException with every fault there is, when it cannot be answered */
    public Question<BenchRequest> read(byte[] body) {
        return readHaving(Collections.emptySet(), body);
    }

    /** The same of somebody who has these numbers besides the pistons in hand, whatever became of them since. */
    public Question<BenchRequest> readHaving(Set<PartNumber> numbers, byte[] body) {
        Opening asked = openings.open(body, MEMBERS);
        List<PistonReading> pistons = new PistonsReader(asked, asked.ruler()).read(asked.at("pistons"));
        List<Piston> inHand = pistons.stream().map(PistonReading::part).toList();
        Opening opening = asked.having(PistonsReader.with(inHand, numbers));
        Condition condition = condition(opening.at("condition"));
        Optional<Choice> choice = new ChoiceReader(opening).read(inHand);
        Weighed weighed = PistonsReader.weighed(opening.at("weighed"));
        List<CylinderSurvey> cylinders = cylinders(opening, condition);
        Deck deck = DeckReader.read(opening.top(), opening.ruler());
        Measuring ofHoles = opening.ofHoles();
        Measuring ofPistons = PistonsReader.measuring(opening);
        opening.faults().raise();
        return Question.of(
                opening,
                new BenchRequest(
                        choice.orElseThrow(),
                        condition,
                        pistons,
                        weighed,
                        cylinders,
                        deck,
                        ofHoles,
                        ofPistons,
                        opening.on()));
    }

    private static Condition condition(Place place) {
        return place.word(List.of(Condition.values()), Condition::label).orElse(Condition.WORN);
    }

    /** None need be measured while all are still to be honed. */
    private static List<CylinderSurvey> cylinders(Opening opening, Condition condition) {
        Place place = opening.at("cylinders");
        if (!place.isGiven() && condition == Condition.WORN) {
            return opening.engine().stream()
                    .flatMap(engine -> engine.cylinders().stream())
                    .map(Cylinder::name)
                    .map(CylinderSurvey::unsurveyed)
                    .toList();
        }
        SurveyReader hole = new SurveyReader(opening.ruler());
        return new CylindersReader<>(hole::read, CylinderSurvey::unsurveyed, opening.engine()).read(place);
    }
}
