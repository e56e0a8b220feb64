package org.borewright.api.match.request;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.api.asked.Opening;
import org.borewright.api.asked.Place;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.NearNames;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.kit.request.Stamp;
import org.borewright.measure.LengthUnit;

/**
 * Reads a stamp against the sizes of the engine: a stamp that leads to several, to none, or to one that no piston was ever made in, is asked
 * back.
 */
final class StampReader {

    private static final int LONGEST = 20;

    private StampReader() {}

    static Optional<Stamp> stamp(Place place) {
        place.need("The stamp is missing.");
        Optional<String> text = place.text();
        if (text.isPresent() && (text.get().isBlank() || text.get().length() > LONGEST)) {
            place.fault(ProblemType.WRONG_FORM, "The stamp is empty or too long.", "1 to " + LONGEST + " characters");
            return Optional.empty();
        }
        return text.map(Stamp::new);
    }

    /** The one reading that a crown can bear; what leads to none or to several is noted with the sizes it may be. */
    static Optional<Stamp.Reading> reading(Opening opening, Optional<Stamp> stamp) {
        Optional<LengthUnit> told = opening.at("unit").isGiven() ? opening.unit() : Optional.empty();
        return stamp.flatMap(typed -> opening.shelf().flatMap(shelf -> {
            List<Stamp.Reading> readings = typed.readings(shelf, told);
            List<Stamp.Reading> made = readings.stream()
                    .filter(reading -> shelf.wasMade(reading.size()))
                    .toList();
            if (made.size() == 1) {
                return Optional.of(made.get(0));
            }
            opening.at("stamp").add(unclear(opening.at("stamp"), shelf, made.isEmpty() ? readings : made));
            return Optional.empty();
        }));
    }

    private static Fault unclear(Place place, Shelf shelf, List<Stamp.Reading> readings) {
        List<Size> meant = readings.stream().map(Stamp.Reading::size).toList();
        boolean made = meant.stream().anyMatch(shelf::wasMade);
        List<String> labels = (made ? meant : shelf.sizes())
                .stream().filter(shelf::wasMade).map(Size::label).toList();
        return Fault.of(ProblemType.UNCLEAR_STAMP, place.pointer(), reason(shelf, readings, made))
                .sent(place.sent())
                .against(NearNames.either(labels))
                .wayOut("Measure a piston, or look at the crown again; then send the size as it is labelled: "
                        + NearNames.either(labels) + ".");
    }

    private static String reason(Shelf shelf, List<Stamp.Reading> readings, boolean made) {
        String engine = shelf.engine().code();
        return readings.isEmpty()
                ? "The stamp is no size of " + engine + ", however it is read."
                : readings.stream()
                        .map(reading -> reading.size().label() + " (" + reading.as() + ")")
                        .collect(Collectors.joining(
                                " or ",
                                "The stamp may be ",
                                made ? "." : ", and no piston of that size was ever made for " + engine + "."));
    }
}
