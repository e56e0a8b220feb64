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
 * @param rings new ones for the pistons that are in it
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
        NewRings rings,
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
                NewRings.ANY,
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
        return new MatchRequest(condition, present, cylinders, gauge, climate, other, asked, asFound, rings, on);
    }

    /** The same question that asks for a size. */
    public MatchRequest asking(Size size) {
        return new MatchRequest(
                condition, present, cylinders, gauge, climate, deck, Optional.of(size), asFound, rings, on);
    }

    /** The same question on another day. */
    public MatchRequest on(LocalDate day) {
        return new MatchRequest(condition, present, cylinders, gauge, climate, deck, asked, asFound, rings, day);
    }

    /** The same question with other new rings. */
    public MatchRequest with(NewRings others) {
        return new MatchRequest(condition, present, cylinders, gauge, climate, deck, asked, asFound, others, on);
    }

    /** The same question with other surveys of the holes. */
    public MatchRequest surveyed(List<CylinderSurvey> others) {
        return new MatchRequest(condition, present, others, gauge, climate, deck, asked, asFound, rings, on);
    }
}
