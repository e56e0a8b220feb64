package org.borewright.api.bench.request;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
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
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.Weighed;
import org.borewright.kit.bench.finish.FinishRequest;
import org.borewright.kit.bench.finish.FittedHole;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.CylinderSurvey;

/** Reads what is asked after honing. */
@ApplicationScoped
public class FinishReader {

    private static final String[] MEMBERS = {
        "size",
        "design",
        "ringSet",
        "temperature",
        "gauge",
        "roomTemperature",
        "ringsFiled",
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
    public FinishReader(Openings openings) {
        this.openings = openings;
    }

    /** The question. @throws ProblemException with every fault there is, when it cannot be answered */
    public Question<FinishRequest> read(byte[] body) {
        return readHaving(Collections.emptySet(), body);
    }

    /** The same of somebody who has these numbers besides the pistons in hand, whatever became of them since. */
    public Question<FinishRequest> readHaving(Set<PartNumber> numbers, byte[] body) {
        Opening asked = openings.open(body, MEMBERS);
        PistonsReader reader = new PistonsReader(asked, asked.ruler());
        List<PistonReading> pistons = reader.read(asked.at("pistons"));
        Weighed weighed = PistonsReader.weighed(asked.at("weighed"));
        List<Fitted> fitted = fitted(asked, reader);
        List<Piston> inHand = inHand(pistons, fitted);
        Opening opening = asked.having(PistonsReader.with(inHand, numbers));
        Optional<Choice> choice = new ChoiceReader(opening).read(inHand);
        Optional<RingSet> rings = choice.flatMap(chosen -> rings(opening.at("ringSet"), chosen));
        List<FittedHole> holes = holes(fitted, pistons);
        Deck deck = DeckReader.read(opening.top(), opening.ruler());
        boolean atRoomTemperature = atRoomTemperature(opening.at("roomTemperature"));
        boolean ringsFiled = opening.at("ringsFiled").truth().orElse(false);
        Measuring ofHoles = opening.ofHoles();
        Measuring ofPistons = PistonsReader.measuring(opening);
        opening.faults().raise();
        return Question.of(
                opening,
                new FinishRequest(
                        choice.orElseThrow(),
                        rings,
                        pistons,
                        weighed,
                        holes,
                        deck,
                        ofHoles,
                        ofPistons,
                        atRoomTemperature,
                        ringsFiled,
                        opening.on()));
    }

    /**
     * A hole as it was sent, before its tag is looked up.
     *
     * @param place of the hole; empty where it was not sent
     */
    private record Fitted(CylinderSurvey survey, Optional<Place> place, Optional<String> tag, Optional<Piston> part) {

        static Fitted missing(String name) {
            return new Fitted(CylinderSurvey.unsurveyed(name), Optional.empty(), Optional.empty(), Optional.empty());
        }
    }

    private static boolean atRoomTemperature(Place place) {
        place.need("It is not said whether all holes were measured after the block had come to room temperature.");
        return place.truth().orElse(false);
    }

    private static List<Fitted> fitted(Opening opening, PistonsReader pistons) {
        SurveyReader hole = new SurveyReader(opening.ruler());
        return new CylindersReader<>(place -> fitted(hole, pistons, place), Fitted::missing, opening.engine())
                .read(opening.at("cylinders"));
    }

    private static Fitted fitted(SurveyReader hole, PistonsReader pistons, Place place) {
        Place tag = place.at("tag");
        Place number = place.at("piston");
        if (tag.isGiven() && number.isGiven()) {
            number.fault(ProblemType.WRONG_FORM, "A tag and a number are both given.", "one of the two");
        } else if (!tag.isGiven()) {
            number.need("It is not said which piston goes in: give the tag of a measured one, or a number.");
        }
        return new Fitted(
                hole.read(place, "tag", "piston"), Optional.of(place), PistonsReader.tag(tag), pistons.part(number));
    }

    private static List<Piston> inHand(List<PistonReading> pistons, List<Fitted> fitted) {
        List<Piston> all =
                new ArrayList<>(pistons.stream().map(PistonReading::part).toList());
        fitted.forEach(hole -> hole.part().ifPresent(all::add));
        return all;
    }

    private static List<FittedHole> holes(List<Fitted> fitted, List<PistonReading> pistons) {
        List<FittedHole> holes = new ArrayList<>();
        List<String> taken = new ArrayList<>();
        for (Fitted hole : fitted) {
            hole.tag().ifPresent(tag -> checkTag(hole.place().orElseThrow().at("tag"), tag, pistons, taken));
            Optional<Piston> part = hole.tag()
                    .flatMap(tag -> pistons.stream()
                            .filter(piston -> piston.tag().equals(tag))
                            .findFirst()
                            .map(PistonReading::part))
                    .or(hole::part);
            part.ifPresent(number -> holes.add(new FittedHole(hole.survey(), number, hole.tag())));
        }
        return holes;
    }

    private static void checkTag(Place place, String tag, List<PistonReading> pistons, List<String> taken) {
        List<String> tags = pistons.stream().map(PistonReading::tag).toList();
        if (!tags.contains(tag)) {
            place.unknownWord(ProblemType.WRONG_PISTONS, tag, tags);
        } else if (taken.contains(tag)) {
            place.fault(ProblemType.WRONG_PISTONS, "This piston goes into another hole already.", "each tag once");
        }
        taken.add(tag);
    }

    private static Optional<RingSet> rings(Place place, Choice choice) {
        List<RingSet> sets = choice.ringSets();
        if (place.isGiven()) {
            return place.word(sets, set -> set.number().text());
        }
        if (sets.size() > 1) {
            place.add(Fault.of(
                            ProblemType.MISSING_FIELD,
                            place.pointer(),
                            "Several ring sets go with these pistons, and it is not said which was fitted.")
                    .against(String.join(
                            " or ",
                            sets.stream().map(set -> set.number().text()).toList())));
        }
        return sets.stream().findFirst();
    }
}
