package org.borewright.catalog.load.sense;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.GasketKit;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.Bridge;
import org.borewright.fit.Comparison;
import org.borewright.fit.GasketOpening;
import org.borewright.fit.Outcome;
import org.borewright.fit.PistonToHead;
import org.borewright.fit.shape.Crown;
import org.borewright.measure.Length;

/**
 * Gaskets, crowns and the metal between the holes. At standard all of it must go; what a larger size does not leave room for is told
 * in a match, for it blocks that size and not the catalogue.
 */
final class DeckSense {

    private DeckSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        Stream<Objection> holes =
                PhysicalSense.atStandard(shelf)
                        .map(piston -> piston.shape().largestFinish())
                        .max(Length::compareTo)
                        .stream()
                        .flatMap(finish -> Stream.concat(gaskets(shelf, finish), bridges(shelf.engine(), finish)));
        return Stream.concat(holes, shelf.parts().designs().stream().flatMap(design -> crown(shelf, design)));
    }

    private static Stream<Objection> gaskets(Shelf shelf, Length finish) {
        return shelf.parts().gasketKits().stream()
                .flatMap(kit -> Objection.against(
                        Place.of("gasket_kits.csv", "gasket_kit", kit),
                        "the largest hole at standard",
                        GasketOpening.check(
                                kit.shape(), finish, shelf.engine().deck().head())));
    }

    private static Stream<Objection> bridges(Engine engine, Length finish) {
        List<Cylinder> holes = engine.cylinders();
        return IntStream.range(0, holes.size() - 1)
                .boxed()
                .flatMap(i -> bridge(engine, holes.get(i), holes.get(i + 1), finish));
    }

    private static Stream<Objection> bridge(Engine engine, Cylinder hole, Cylinder next, Length finish) {
        Place line = new Place("cylinders.csv", List.of("engine", "cylinder"), List.of(engine.code(), hole.name()));
        return hole.pitchToNext().stream()
                .flatMap(pitch -> engine.wall().bridgeLeast().stream()
                        .map(least -> Bridge.check(hole.name() + " and " + next.name(), pitch, finish, finish, least)))
                .flatMap(check -> Objection.against(line, "the largest holes at standard", List.of(check)));
    }

    /** With one of the kits the piston must come neither too near nor too far; which of them, the match finds. */
    private static Stream<Objection> crown(Shelf shelf, PistonDesign design) {
        return shelf.parts().pistons().stream()
                .filter(piston -> piston.design().equals(design.code()))
                .limit(1)
                .flatMap(piston -> crown(shelf, design, piston.shape().crown()));
    }

    private static Stream<Objection> crown(Shelf shelf, PistonDesign design, Crown crown) {
        List<GasketKit> kits = shelf.parts().gasketKits();
        if (kits.stream().anyMatch(kit -> holdsNothing(distance(shelf, kit, crown)))) {
            return Stream.empty();
        }
        Place line = new Place("piston_designs.csv", List.of("design"), List.of(design.code()));
        return kits.stream().flatMap(kit -> Objection.against(line, kit.number().text(), distance(shelf, kit, crown)));
    }

    private static boolean holdsNothing(List<Comparison> checks) {
        return checks.stream().allMatch(check -> check.outcome() == Outcome.IN);
    }

    private static List<Comparison> distance(Shelf shelf, GasketKit kit, Crown crown) {
        return PistonToHead.check(shelf.engine().deck(), kit.shape(), crown, Length.ZERO);
    }
}
