package org.borewright.api.asked;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.borewright.api.FitTables;
import org.borewright.api.problem.Faults;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.store.Shelves;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.LengthUnit;

/** Reads what every question begins with: the engine, the units, the day. */
@ApplicationScoped
public class Openings {

    private final Shelves shelves;
    private final FitTables fitTables;
    private final Clock clock;

    /** Looks engines up on these shelves and takes today from this clock. */
    public Openings(Shelves shelves, FitTables fitTables, Clock clock) {
        this.shelves = shelves;
        this.fitTables = fitTables;
        this.clock = clock;
    }

    /**
     * The beginning of a question.
     *
     * @param known the members it may have besides those read here
     * @throws ProblemException if the body is not JSON, or no object
     */
    public Opening open(byte[] body, String... known) {
        return open(body, fits -> Optional.empty(), known);
    }

    /** The same, where lengths are in the unit that the engine's oversizes step in unless another is named. */
    public Opening openInStepsOfEngine(byte[] body, String... known) {
        return open(
                body,
                fits -> fits.map(table -> table.shelf().engine().build().steps())
                        .or(() -> Optional.of(LengthUnit.MILLIMETRE)),
                known);
    }

    private Opening open(byte[] body, Function<Optional<FitTable>, Optional<LengthUnit>> usual, String... known) {
        Catalogue catalogue = shelves.catalogue();
        Faults faults = Faults.ofBody();
        Place top = JsonBody.read(body, faults);
        String[] all = Stream.concat(Stream.of("engine", "unit", "temperatureUnit", "date"), Stream.of(known))
                .toArray(String[]::new);
        if (!top.isObject(all)) {
            top.wrongForm("an object");
            faults.raise();
        }
        Optional<FitTable> fits = EngineReader.read(top.at("engine"), catalogue).map(fitTables::of);
        return new Opening(
                catalogue,
                faults,
                top,
                fits,
                Opening.unit(top.at("unit"), usual.apply(fits)),
                ClimateReader.scale(top.at("temperatureUnit")),
                DateReader.read(top.at("date")).orElseGet(() -> LocalDate.now(clock)));
    }
}
