package org.borewright.catalog.load.rule;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.store.row.BearingRow;
import org.borewright.catalog.store.row.ClipRow;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.catalog.store.row.FastenerRow;
import org.borewright.catalog.store.row.GasketKitRow;
import org.borewright.catalog.store.row.GasketRow;
import org.borewright.catalog.store.row.PinRow;
import org.borewright.catalog.store.row.PistonDesignRow;
import org.borewright.catalog.store.row.PistonRow;
import org.borewright.catalog.store.row.RingSetRow;

/** Where parts are used, and how many of them an engine takes at the most. */
final class Uses {

    private static final int CLIPS_PER_PISTON = 2;

    private final Map<String, Integer> holes;
    private final Map<String, String> engines;
    private final Map<String, List<Use>> byNumber = new HashMap<>();

    /** One maker's pistons of one size. */
    record Made(String engine, String design, String size) {}

    /** A part in pistons of its design or of any design of its engine, of its size or of any. */
    record Use(String engine, Optional<String> design, Optional<String> size, int taken) {

        boolean isIn(Made made) {
            return engine.equals(made.engine())
                    && design.filter(own -> !own.equals(made.design())).isEmpty()
                    && size.filter(own -> !own.equals(made.size())).isEmpty();
        }
    }

    Uses(Examination examination) {
        holes = examination.rows(EngineRow.class).stream()
                .collect(toMap(row -> row.engine, row -> row.layout.cylinders()));
        engines = examination.rows(PistonDesignRow.class).stream().collect(toMap(row -> row.design, row -> row.engine));
        examination.rows(PistonRow.class).forEach(row -> ofDesign(row.piston, row.design, Optional.of(row.size), 1));
        examination.rows(RingSetRow.class).forEach(row -> ofDesign(row.ringSet, row.design, Optional.of(row.size), 1));
        examination.rows(PinRow.class).forEach(row -> ofDesign(row.pin, row.design, Optional.empty(), 1));
        examination
                .rows(ClipRow.class)
                .forEach(row -> ofDesign(row.clip, row.design, Optional.empty(), CLIPS_PER_PISTON));
        examination.rows(BearingRow.class).forEach(row -> ofEngine(row.bearing, row.engine, holesOf(row.engine)));
        examination
                .rows(GasketKitRow.class)
                .forEach(row -> ofEngine(row.gasketKit, row.engine, serving(holesOf(row.engine), row.servesCylinders)));
        examination
                .rows(GasketRow.class)
                .forEach(row -> ofEngine(row.gasket, row.engine, serving(holesOf(row.engine), row.servesCylinders)));
        examination.rows(FastenerRow.class, row -> row.engine).forEach(this::bolts);
    }

    private void bolts(String engine, List<FastenerRow> fasteners) {
        fasteners.stream()
                .filter(row -> row.singleUseBolt != null)
                .collect(toMap(row -> row.singleUseBolt, row -> row.count, Integer::sum))
                .forEach((bolt, count) -> ofEngine(bolt, engine, count));
    }

    private void ofDesign(String number, String design, Optional<String> size, int perHole) {
        String engine = engineOf(design);
        put(number, new Use(engine, Optional.of(design), size, perHole * holesOf(engine)));
    }

    private void ofEngine(String number, String engine, int taken) {
        put(number, new Use(engine, Optional.empty(), Optional.empty(), taken));
    }

    private void put(String number, Use use) {
        byNumber.computeIfAbsent(number, unused -> new ArrayList<>()).add(use);
    }

    private int holesOf(String engine) {
        return holes.getOrDefault(engine, 0);
    }

    private static int serving(int cylinders, int served) {
        return (cylinders + served - 1) / served;
    }

    /** The engine of a design; empty where the line of the design could not be read. */
    String engineOf(String design) {
        return engines.getOrDefault(design, "");
    }

    /** Everywhere a part is used. */
    List<Use> of(String number) {
        return byNumber.getOrDefault(number, List.of());
    }

    /** How many of a part pistons of a design at a size ask for; 0 where it is not used with them. */
    int taken(String number, Made made) {
        return of(number).stream()
                .filter(use -> use.isIn(made))
                .mapToInt(Use::taken)
                .max()
                .orElse(0);
    }

    /** Whether it is a piston or a ring set, and not for these pistons. */
    boolean isOfAnotherSize(String number, Made made) {
        return of(number).stream().anyMatch(use -> use.size().isPresent() && !use.isIn(made));
    }
}
