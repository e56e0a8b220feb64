package org.borewright.catalog.load.rule;

import static java.util.Comparator.comparingInt;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.borewright.catalog.store.row.CylinderRow;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.catalog.store.row.SizeRow;
import org.borewright.measure.Length;

/** What engines, cylinders and sizes owe each other. */
final class EngineRules {

    private final Examination examination;
    private final Map<String, List<CylinderRow>> cylinders;
    private final Map<String, List<SizeRow>> sizes;

    private EngineRules(Examination examination) {
        this.examination = examination;
        this.cylinders = examination.rows(CylinderRow.class, row -> row.engine);
        this.sizes = examination.rows(SizeRow.class, row -> row.engine);
    }

    static void check(Examination examination) {
        EngineRules rules = new EngineRules(examination);
        for (EngineRow engine : examination.rows(EngineRow.class)) {
            rules.plate(engine);
            if (examination.isWhole(CylinderRow.class, "engine", engine.engine)) {
                rules.layout(engine);
                rules.bridge(engine);
                rules.pitch(engine);
            }
            if (examination.isWhole(SizeRow.class, "engine", engine.engine)) {
                rules.standard(engine);
            }
        }
    }

    private void plate(EngineRow engine) {
        if (engine.torquePlate && !engine.construction.mayBeBored()) {
            examination.bad(engine, "torque_plate", Duty.PLATE, engine.construction.label());
        }
    }

    private void layout(EngineRow engine) {
        int named = cylinders.getOrDefault(engine.engine, List.of()).size();
        if (named != engine.layout.cylinders()) {
            examination.bad(engine, "layout", Duty.HOLES, engine.layout.cylinders(), named);
        }
    }

    private void bridge(EngineRow engine) {
        boolean shareMetal =
                cylinders.getOrDefault(engine.engine, List.of()).stream().anyMatch(hole -> hole.pitchToNext != null);
        if (shareMetal && engine.bridgeLeast == null) {
            examination.bad(engine, "bridge_least_mm", Duty.BRIDGE);
        }
    }

    private void pitch(EngineRow engine) {
        cylinders.getOrDefault(engine.engine, List.of()).stream()
                .max(comparingInt(hole -> hole.order))
                .filter(last -> last.pitchToNext != null)
                .ifPresent(last -> examination.bad(last, "pitch_to_next_mm", Duty.PITCH, last.cylinder));
    }

    private void standard(EngineRow engine) {
        Map<Length, SizeRow> byOversize = new HashMap<>();
        for (SizeRow size : sizes.getOrDefault(engine.engine, List.of())) {
            SizeRow before = byOversize.putIfAbsent(size.oversize, size);
            if (before != null) {
                examination.bad(size, "oversize_mm", Duty.OVERSIZE, before.size);
            }
        }
        if (!byOversize.containsKey(Length.ZERO)) {
            examination.bad(engine, "engine", Duty.STANDARD);
        }
    }
}
