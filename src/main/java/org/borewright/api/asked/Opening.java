package org.borewright.api.asked;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.borewright.api.problem.Faults;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Engine;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.Gauge;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Measuring;
import org.borewright.measure.Temperature.Scale;

/**
 * What every question begins with. What is faulty reads as something harmless: the faults are raised before anybody sees it.
 *
 * @param catalogue as it is when the question is read
 * @param faults found so far
 * @param top of the body
 * @param fits what fits the engine asked about; empty when it is not known
 * @param unit of all lengths; empty when it could not be read
 * @param scale of all temperatures; empty when it could not be read
 * @param on the day of the question
 */
public record Opening(
        Catalogue catalogue,
        Faults faults,
        Place top,
        Optional<FitTable> fits,
        Optional<LengthUnit> unit,
        Optional<Scale> scale,
        LocalDate on) {

    static Optional<LengthUnit> unit(Place place, Optional<LengthUnit> usual) {
        if (!place.isGiven() && usual.isPresent()) {
            return usual;
        }
        place.need("The unit of the lengths is missing: mm or in.");
        return place.word(List.of(LengthUnit.values()), LengthUnit::symbol);
    }

    /** The same of somebody who has these numbers already, whatever became of them since. */
    public Opening having(Set<PartNumber> numbers) {
        return new Opening(catalogue, faults, top, fits.map(table -> table.having(numbers)), unit, scale, on);
    }

    /** What a member holds. */
    public Place at(String name) {
        return top.at(name);
    }

    /** Everything of the engine asked about; empty when it is not known. */
    public Optional<Shelf> shelf() {
        return fits.map(FitTable::shelf);
    }

    /** The engine asked about; empty when it is not known. */
    public Optional<Engine> engine() {
        return shelf().map(Shelf::engine);
    }

    /** For lengths of this engine in this unit. */
    public Ruler ruler() {
        return Ruler.of(unit, fits);
    }

    /** A size of the engine; empty when it is not given, or is none of this engine, which is noted. */
    public Optional<Size> size(Place place) {
        Optional<String> label = place.text();
        Optional<Size> size = shelf().flatMap(known -> label.flatMap(known::size));
        if (shelf().isPresent() && label.isPresent() && size.isEmpty()) {
            place.add(UnknownName.size(place.pointer(), label.get(), shelf().get()));
        }
        return size;
    }

    /** With what and how warm things of one kind were measured. */
    public Measuring measuring(Place gauge, Gauge.Kind usual, Place temperature) {
        return new Measuring(gauge(gauge, usual), ClimateReader.climate(temperature, scale));
    }

    /** With what and how warm the holes were measured. */
    public Measuring ofHoles() {
        return measuring(at("gauge"), Gauge.Kind.BORE_GAUGE, at("temperature"));
    }

    /** With what things of one kind were measured, and what measures them. */
    public Gauge gauge(Place place, Gauge.Kind usual) {
        return new GaugeReader(ruler(), scale, catalogue, usual).read(place);
    }
}
