package org.borewright.catalog.load.sense;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.Check;
import org.borewright.fit.MassSpread;
import org.borewright.fit.PistonSize;
import org.borewright.fit.shape.MassRange;

/**
 * Pistons against their size, and against each other. A piston is refused at whatever size it does not belong to, one of further engine
 * work too; and so is one that no other of its design and size may stand beside. Grades that may not stand beside each other are no slip
 * while each may beside others: a match chooses among them, and judges those it chose.
 */
final class PistonSense {

    private static final Comparator<Pair> BY_SPREAD = Comparator.comparing(pair -> MassSpread.of(pair.masses()));

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
                pistons.stream()
                        .flatMap(piston -> closest(shelf.engine(), pistons, piston).stream())
                        .flatMap(pair -> pair.objections(shelf.engine()))
                        .distinct());
    }

    private static Stream<Objection> size(Engine engine, Piston piston, Size size) {
        return Objection.against(
                line(piston),
                size.label(),
                PistonSize.check(piston.shape(), engine.bore().asNew(), size.oversize()));
    }

    /** The piston with the one it must stand beside at the best, in whichever hole it goes itself; empty in a single. */
    private static Optional<Pair> closest(Engine engine, List<Piston> made, Piston piston) {
        return engine.cylinders().stream()
                .filter(own -> piston.hand().goesInto(own.hand()))
                .flatMap(own -> engine.cylinders().stream()
                        .filter(hole -> !hole.equals(own))
                        .flatMap(hole -> closest(made, piston, hole).stream())
                        .max(BY_SPREAD)
                        .stream())
                .min(BY_SPREAD);
    }

    private static Optional<Pair> closest(List<Piston> made, Piston piston, Cylinder hole) {
        return made.stream()
                .filter(other -> other.hand().goesInto(hole.hand()))
                .map(other -> new Pair(piston, other))
                .min(BY_SPREAD);
    }

    /** Two pistons in two holes. */
    private record Pair(Piston one, Piston other) {

        List<MassRange> masses() {
            return List.of(one.shape().mass(), other.shape().mass());
        }

        Stream<Objection> objections(Engine engine) {
            Piston heavier = Collections.max(
                    List.of(one, other),
                    Comparator.comparing(
                                    (Piston piston) -> piston.shape().mass().greatestMilligrams())
                            .thenComparing(Piston::number));
            Check spread = MassSpread.check(masses(), engine.limits().massSpreadMilligrams());
            return Objection.against(line(heavier), "", List.of(spread));
        }
    }

    private static Place line(Piston piston) {
        return Place.of("pistons.csv", "piston", piston);
    }
}
