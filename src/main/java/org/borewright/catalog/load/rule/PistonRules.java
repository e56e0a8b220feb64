package org.borewright.catalog.load.rule;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.borewright.catalog.Hand;
import org.borewright.catalog.store.row.CatalogRow;
import org.borewright.catalog.store.row.ClipRow;
import org.borewright.catalog.store.row.CylinderRow;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.catalog.store.row.PistonDesignRow;
import org.borewright.catalog.store.row.PistonRow;
import org.borewright.catalog.store.row.RingSetRow;
import org.borewright.catalog.store.row.SizeRow;
import org.borewright.fit.shape.Choke;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.measure.Length;

/** What pistons owe their design and their engine. */
final class PistonRules {

    private final Examination examination;
    private final Map<String, EngineRow> engines;
    private final Map<String, PistonDesignRow> designs;
    private final Map<String, List<CylinderRow>> cylinders;
    private final Map<String, List<SizeRow>> sizes;

    private PistonRules(Examination examination) {
        this.examination = examination;
        engines = examination.rows(EngineRow.class).stream().collect(toMap(row -> row.engine, identity()));
        designs = examination.rows(PistonDesignRow.class).stream().collect(toMap(row -> row.design, identity()));
        cylinders = examination.rows(CylinderRow.class, row -> row.engine);
        sizes = examination.rows(SizeRow.class, row -> row.engine);
    }

    static void check(Examination examination) {
        PistonRules rules = new PistonRules(examination);
        examination.rows(PistonDesignRow.class).forEach(rules::clearance);
        examination.rows(PistonDesignRow.class).forEach(rules::clips);
        examination.rows(ClipRow.class).forEach(rules::seatOf);
        examination.rows(RingSetRow.class).forEach(row -> rules.size(row, row.design, row.size));
        examination.rows(PistonRow.class).forEach(rules::piston);
    }

    private void clearance(PistonDesignRow design) {
        try {
            ClearanceWindow window =
                    new ClearanceWindow(design.clearanceLeast, design.clearanceTarget, design.clearanceGreatest);
            if (design.clearanceWear != null && design.clearanceWear.isLessThan(window.greatest())) {
                examination.bad(design, "clearance_wear_mm", Duty.WEAR_LIMIT);
            }
            choke(design, window.greatest().minus(window.least()));
        } catch (IllegalArgumentException falling) {
            examination.bad(design, "clearance_target_mm", Duty.CLEARANCES, String.valueOf(falling.getMessage()));
        }
    }

    private void choke(PistonDesignRow design, Length room) {
        Optional.ofNullable(engines.get(design.engine))
                .flatMap(engine -> Optional.ofNullable(engine.choke))
                .map(window -> new Choke(window).leastDifference())
                .filter(difference -> difference.isMoreThan(room))
                .ifPresent(
                        difference -> examination.bad(design, "clearance_greatest_mm", Duty.CHOKE, difference, room));
    }

    private void clips(PistonDesignRow design) {
        Optional.ofNullable(engines.get(design.engine))
                .filter(engine -> !engine.pinPressed && design.clipSpan == null)
                .ifPresent(engine -> examination.bad(design, "clip_span_least_mm", Duty.CLIP_GROOVES));
    }

    private void seatOf(ClipRow clip) {
        Optional.ofNullable(designs.get(clip.design))
                .filter(design -> design.clipSpan == null)
                .ifPresent(design -> examination.bad(clip, "design", Duty.CLIP_SEAT));
    }

    private void piston(PistonRow piston) {
        Optional<SizeRow> size = size(piston, piston.design, piston.size);
        if (piston.grade != null && size.isPresent() && !size.get().oversize.equals(Length.ZERO)) {
            examination.bad(piston, "grade", Duty.GRADE, piston.size);
        }
        engineOf(piston.design)
                .filter(engine -> piston.hand != Hand.ANY && !hasHole(engine, piston.hand))
                .ifPresent(engine -> examination.bad(piston, "hand", Duty.HAND, engine, piston.hand.label()));
    }

    private boolean hasHole(String engine, Hand hand) {
        return !examination.isWhole(CylinderRow.class, "engine", engine)
                || cylinders.getOrDefault(engine, List.of()).stream().anyMatch(hole -> hole.hand == hand);
    }

    /** The size of a label; empty, with a complaint, where the engine has none such. */
    private Optional<SizeRow> size(CatalogRow row, String design, String label) {
        Optional<String> engine = engineOf(design).filter(code -> examination.isWhole(SizeRow.class, "engine", code));
        List<SizeRow> made = engine.map(sizes::get).orElse(List.of());
        Optional<SizeRow> size =
                made.stream().filter(there -> there.size.equals(label)).findFirst();
        if (engine.isPresent() && size.isEmpty()) {
            examination.bad(
                    row,
                    "size",
                    Duty.SIZE,
                    engine.get(),
                    made.stream().map(there -> there.size).collect(joining(", ")));
        }
        return size;
    }

    private Optional<String> engineOf(String design) {
        return Optional.ofNullable(designs.get(design)).map(row -> row.engine);
    }
}
