package org.borewright.kit.request;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.borewright.catalog.Size;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * What is asked of one engine.
 *
 * @param condition worn or finished
 * @param present the size it has now
 * @param cylinders one survey per hole, in the engine's order
 * @param gauge what the readings were taken with
 * @param climate the temperature they were taken at
 * @param deck as found, and what is to be skimmed off it
 * @param asked a larger size asked for; empty for the smallest that serves
 * @param asFound what was seen of piston and wall of each hole, in the engine's order
 * @param ringsFiled whether each new ring that must be filed for its hole is; empty as long as nobody has to say
 * @param on the day of the enquiry, from which dates are reckoned
 */
public record MatchRequest(
        Condition condition,
        PresentSize present,
        List<CylinderSurvey> cylinders,
        Gauge gauge,
        Climate climate,
        Deck deck,
        Optional<Size> asked,
        List<AsFound> asFound,
        Optional<Boolean> ringsFiled,
        LocalDate on) {

    /** @throws IllegalArgumentException unless as many holes were seen as surveyed */
    public MatchRequest {
        cylinders = List.copyOf(cylinders);
        asFound = List.copyOf(asFound);
        if (cylinders.size() != asFound.size()) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%d holes surveyed, %d seen", cylinders.size(), asFound.size()));
        }
    }

    /** A request that tells nothing of the pistons that are in the engine. */
    public MatchRequest(
            Condition condition,
            PresentSize present,
            List<CylinderSurvey> cylinders,
            Gauge gauge,
            Climate climate,
            Deck deck,
            Optional<Size> asked,
            LocalDate on) {
        this(
                condition,
                present,
                cylinders,
                gauge,
                climate,
                deck,
                asked,
                Collections.nCopies(cylinders.size(), AsFound.NOT_TOLD),
                Optional.empty(),
                on);
    }

    /** With what and how warm the holes were measured. */
    public Measuring measuring() {
        return new Measuring(gauge, climate);
    }

    /** With what and how warm the present pistons were measured, each way once; nothing rests on those of finished holes. */
    public List<Measuring> ofPistons() {
        return asFound.stream()
                .map(AsFound::piston)
                .filter(piston -> condition == Condition.WORN && piston.asRead().isPresent())
                .map(PresentPiston::measuring)
                .distinct()
                .toList();
    }

    /** The same question of a deck that is otherwise. */
    public MatchRequest with(Deck other) {
        return new MatchRequest(condition, present, cylinders, gauge, climate, other, asked, asFound, ringsFiled, on);
    }

    /** The same question that asks for a size. */
    public MatchRequest asking(Size size) {
        return new MatchRequest(
                condition, present, cylinders, gauge, climate, deck, Optional.of(size), asFound, ringsFiled, on);
    }

    /** The same question on another day. */
    public MatchRequest on(LocalDate day) {
        return new MatchRequest(condition, present, cylinders, gauge, climate, deck, asked, asFound, ringsFiled, day);
    }

    /** The same question on the day the engine leaves: a ring that is not said to be filed is not. */
    public MatchRequest leaving() {
        Optional<Boolean> filed = Optional.of(ringsFiled.orElse(false));
        return new MatchRequest(condition, present, cylinders, gauge, climate, deck, asked, asFound, filed, on);
    }

    /** The same question with other surveys of the holes. */
    public MatchRequest surveyed(List<CylinderSurvey> others) {
        return new MatchRequest(condition, present, others, gauge, climate, deck, asked, asFound, ringsFiled, on);
    }
}
