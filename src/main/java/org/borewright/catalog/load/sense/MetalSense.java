package org.borewright.catalog.load.sense;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.load.sense.Objection.Place;
import org.borewright.fit.Bridge;
import org.borewright.fit.Comparison;
import org.borewright.fit.CrownInMouth;
import org.borewright.fit.WallLeft;
import org.borewright.measure.Length;

/**
 * The metal around the holes and the mouth of the head. It is refused where the {@linkplain SmallestOffered smallest size} of a design
 * has no room, for then no piston of the design ever goes in. Where a larger size has none, the metal is used up: that blocks the size
 * in a match. A wall that must be surveyed hole by hole says nothing here.
 */
final class MetalSense {

    private MetalSense() {}

    static Stream<Objection> objections(Shelf shelf) {
        return SmallestOffered.of(shelf).stream()
                .flatMap(first -> Stream.concat(ofEngine(shelf.engine(), first), bridges(shelf.engine(), first)));
    }

    private static Stream<Objection> ofEngine(Engine engine, SmallestOffered first) {
        Length finish = first.largest().largestFinish();
        Length centringError = engine.bore().centringError();
        List<Comparison> checks = Stream.of(
                        WallLeft.checkSleeve(engine.wall(), finish, centringError),
                        WallLeft.checkSpigot(engine.wall(), finish, centringError),
                        CrownInMouth.check(
                                engine.deck().head(), first.largest().diameter().greatest()))
                .flatMap(Optional::stream)
                .toList();
        Place line = new Place("engines.csv", List.of("engine"), List.of(engine.code()));
        return Objection.against(line, first.words(), checks);
    }

    private static Stream<Objection> bridges(Engine engine, SmallestOffered first) {
        List<Cylinder> holes = engine.cylinders();
        return IntStream.range(0, holes.size() - 1)
                .boxed()
                .flatMap(i -> bridge(engine, holes.get(i), holes.get(i + 1), first));
    }

    private static Stream<Objection> bridge(Engine engine, Cylinder hole, Cylinder next, SmallestOffered first) {
        Length finish = first.largest().largestFinish();
        Place line = new Place("cylinders.csv", List.of("engine", "cylinder"), List.of(engine.code(), hole.name()));
        return hole.pitchToNext().stream()
                .flatMap(pitch -> engine.wall().bridgeLeast().stream()
                        .map(least -> Bridge.check(hole.name() + " and " + next.name(), pitch, finish, finish, least)))
                .flatMap(check -> Objection.against(line, first.words(), List.of(check)));
    }
}
