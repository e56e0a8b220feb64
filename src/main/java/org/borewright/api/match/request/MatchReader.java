package org.borewright.api.match.request;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.borewright.api.FitTables;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.store.Shelves;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.kit.request.PresentSize.KnownFrom;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Temperature.Scale;

/** Reads the question of a match out of a body of JSON. */
@ApplicationScoped
public class MatchReader {

    private final Shelves shelves;
    private final FitTables fitTables;
    private final Clock clock;

    /** A reader that looks engines up on these shelves and takes today from this clock. */
    public MatchReader(Shelves shelves, FitTables fitTables, Clock clock) {
        this.shelves = shelves;
        this.fitTables = fitTables;
        this.clock = clock;
    }

    /** The question. @throws ProblemException with every fault there is, when it cannot be answered */
    public Asked read(byte[] body) {
        Catalogue catalogue = shelves.catalogue();
        Faults faults = Faults.ofBody();
        Place top = JsonBody.read(body, faults);
        if (!top.isObject(
                "engine",
                "unit",
                "condition",
                "presentSize",
                "temperature",
                "temperatureUnit",
                "gauge",
                "deckFlatness",
                "deckFlatnessUncertainty",
                "deckSkim",
                "skimmedBefore",
                "askedSize",
                "date",
                "cylinders")) {
            top.wrongForm("an object");
            faults.raise();
        }
        Optional<FitTable> fits = EngineReader.read(top.at("engine"), catalogue).map(fitTables::of);
        Optional<LengthUnit> unit = unit(top.at("unit"));
        Ruler ruler = Ruler.of(unit, fits);
        MatchRequest request = request(top, fits.map(FitTable::shelf), ruler, catalogue);
        faults.raise();
        return new Asked(catalogue, fits.orElseThrow(), request, unit.orElseThrow());
    }

    /** What is faulty reads as something harmless: the faults are raised before anybody sees it. */
    private MatchRequest request(Place top, Optional<Shelf> shelf, Ruler ruler, Catalogue catalogue) {
        Condition condition = condition(top.at("condition"));
        Optional<Scale> scale = ClimateReader.scale(top.at("temperatureUnit"));
        CylindersReader cylinders = new CylindersReader(new CylinderReader(ruler, condition), shelf.map(Shelf::engine));
        return new MatchRequest(
                condition,
                presentSize(top.at("presentSize"), shelf),
                cylinders.read(top.at("cylinders")),
                new GaugeReader(ruler, scale, catalogue).read(top.at("gauge")),
                ClimateReader.climate(top.at("temperature"), scale),
                DeckReader.read(top, ruler),
                size(top.at("askedSize"), shelf),
                DateReader.read(top.at("date")).orElseGet(() -> LocalDate.now(clock)));
    }

    private static Optional<LengthUnit> unit(Place place) {
        place.need("The unit of the lengths is missing: mm or in.");
        return place.word(List.of(LengthUnit.values()), LengthUnit::symbol);
    }

    private static Condition condition(Place place) {
        place.need("It is not said whether the holes are worn or finished.");
        return place.word(List.of(Condition.values()), Condition::label).orElse(Condition.WORN);
    }

    private static PresentSize presentSize(Place place, Optional<Shelf> shelf) {
        if (!place.isObject("size", "knownFrom")) {
            return PresentSize.NOT_KNOWN;
        }
        place.at("size").need("The present size is missing; leave presentSize out when nobody knows it.");
        place.at("knownFrom").need("It is not said where the present size is known from.");
        return new PresentSize(
                size(place.at("size"), shelf),
                place.at("knownFrom")
                        .word(List.of(KnownFrom.values()), KnownFrom::label)
                        .orElse(KnownFrom.HEARSAY));
    }

    private static Optional<Size> size(Place place, Optional<Shelf> shelf) {
        Optional<String> label = place.text();
        Optional<Size> size = shelf.flatMap(known -> label.flatMap(known::size));
        if (shelf.isPresent() && label.isPresent() && size.isEmpty()) {
            place.add(UnknownName.size(place.pointer(), label.get(), shelf.get()));
        }
        return size;
    }
}
