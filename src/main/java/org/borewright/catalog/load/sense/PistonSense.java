package org.borewright.catalog.load.sense;

import static java.util.Comparator.comparing;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.Check;
import org.borewright.fit.MassSpread;
import org.borewright.fit.PistonSize;

/**
 * Pistons against their size, and against each other. A piston is refused at whatever size it does not belong to, one of further engine
 * work too; and pistons of one design and size that may not stand beside each other are refused, for nobody chooses among them.
 */
final class PistonSense {

    private PistonSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        return shelf.parts().designs().stream()
                .flatMap(design -> shelf.sizes().stream().flatMap(size -> of(shelf, design, size)));
    }

    private static Stream<Objection> of(Shelf shelf, PistonDesign design, Size size) {
        List<Piston> pistons =
                SmallestOffered.pistons(shelf, design.code(), size.label()).toList();
        return Stream.concat(
                pistons.stream().flatMap(piston -> size(shelf.engine(), piston, size)),
                pistons.stream().max(comparing(piston -> piston.shape().mass().greatestMilligrams())).stream()
                        .flatMap(heaviest -> masses(shelf.engine(), pistons, heaviest)));
    }

    private static Stream<Objection> size(Engine engine, Piston piston, Size size) {
        return Objection.against(
                line(piston),
                size.label(),
                PistonSize.check(piston.shape(), engine.bore().asNew(), size.oversize()));
    }

    /** Any piston of a design and size may stand beside any other. */
    private static Stream<Objection> masses(Engine engine, List<Piston> set, Piston heaviest) {
        Check spread = MassSpread.check(
                set.stream().map(piston -> piston.shape().mass()).toList(),
                engine.cylinders().size(),
                engine.limits().massSpreadMilligrams());
        return Objection.against(line(heaviest), "", List.of(spread));
    }

    private static Place line(Piston piston) {
        return Place.of("pistons.csv", "piston", piston);
    }
}
