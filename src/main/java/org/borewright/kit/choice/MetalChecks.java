package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.fit.Bridge;
import org.borewright.fit.Check;
import org.borewright.fit.MassSpread;
import org.borewright.fit.Unchecked;
import org.borewright.fit.WallLeft;
import org.borewright.fit.shape.MassRange;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Wall;

/** What the metal of an engine bears at a size, and what the pistons weigh against each other: nothing here needs a reading. */
final class MetalChecks {

    private MetalChecks() {}

    /** Spigot and bridges at the largest finish of the pistons that may go into each hole, and the spread of their masses. */
    static List<Check> of(Engine engine, List<List<Piston>> byHole) {
        Length finish = Choice.largestOf(Choice.distinct(byHole)).shape().largestFinish();
        List<Check> checks = new ArrayList<>();
        WallLeft.checkSpigot(engine.wall(), finish, engine.bore().centringError())
                .ifPresent(checks::add);
        checks.addAll(bridges(engine, finish));
        checks.add(massSpread(engine, byHole));
        return List.copyOf(checks);
    }

    /** The worst spread of masses that the pistons that may go into each hole can come to; it says so where grades are still to choose. */
    static Check massSpread(Engine engine, List<List<Piston>> byHole) {
        Check worst = MassSpread.check(
                byHole.stream().map(MetalChecks::masses).toList(),
                engine.limits().massSpreadMilligrams());
        boolean chosen = byHole.stream().allMatch(pistons -> pistons.size() == 1);
        return chosen || worst instanceof Unchecked ? worst : worst.at("worst grades together");
    }

    private static MassRange masses(List<Piston> pistons) {
        return MassRange.around(
                pistons.stream().map(Piston::shape).map(PistonShape::mass).toList());
    }

    /** Spigot and bridges at one finish, which are as made whatever was done to a hole. */
    static List<Check> ofEveryHole(Engine engine, Length finish) {
        List<Check> checks = new ArrayList<>(bridges(engine, finish));
        WallLeft.checkSpigot(engine.wall(), finish, engine.bore().centringError())
                .ifPresent(checks::add);
        return checks;
    }

    /** The wall of any hole of an engine that nobody surveyed; empty where the engine states no least. */
    static List<Check> wallsUnsurveyed(Engine engine, Length finish) {
        BoreSpec bore = engine.bore();
        return WallLeft.check(engine.wall(), Wall.UNKNOWN, bore.asNew().least(), finish, bore.centringError()).stream()
                .toList();
    }

    /** The wall of sleeve or barrel as made at a finish; empty where the engine states none. */
    static Optional<Check> wallAsMade(Engine engine, Length finish) {
        return WallLeft.checkSleeve(engine.wall(), finish, engine.bore().centringError())
                .map(Check.class::cast);
    }

    private static List<Check> bridges(Engine engine, Length finish) {
        List<Check> checks = new ArrayList<>();
        List<Cylinder> holes = engine.cylinders();
        for (int i = 0; i + 1 < holes.size(); i++) {
            String between = holes.get(i).name() + "–" + holes.get(i + 1).name();
            holes.get(i)
                    .pitchToNext()
                    .ifPresent(pitch -> engine.wall()
                            .bridgeLeast()
                            .ifPresent(least -> checks.add(Bridge.check(between, pitch, finish, finish, least))));
        }
        return checks;
    }
}
