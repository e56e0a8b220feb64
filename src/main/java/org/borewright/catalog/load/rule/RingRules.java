package org.borewright.catalog.load.rule;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import org.borewright.catalog.store.row.GrooveRow;
import org.borewright.catalog.store.row.PistonDesignRow;
import org.borewright.catalog.store.row.RingRow;
import org.borewright.catalog.store.row.RingSetRow;

/** What ring sets owe the grooves of their design: one ring for each, and none besides. */
final class RingRules {

    private final Examination examination;
    private final Map<String, List<GrooveRow>> grooves;
    private final Map<String, List<RingRow>> rings;

    private RingRules(Examination examination) {
        this.examination = examination;
        this.grooves = examination.rows(GrooveRow.class, row -> row.design);
        this.rings = examination.rows(RingRow.class, row -> row.ringSet);
    }

    static void check(Examination examination) {
        RingRules rules = new RingRules(examination);
        examination.rows(PistonDesignRow.class).stream()
                .filter(design -> examination.isWhole(GrooveRow.class, "design", design.design))
                .forEach(rules::grooves);
        examination.rows(RingSetRow.class).stream()
                .filter(set -> examination.isWhole(GrooveRow.class, "design", set.design))
                .filter(set -> examination.isWhole(RingRow.class, "ring_set", set.ringSet))
                .forEach(rules::rings);
    }

    private void grooves(PistonDesignRow design) {
        if (!grooves.containsKey(design.design)) {
            examination.bad(design, "design", Duty.GROOVES);
        }
    }

    private void rings(RingSetRow set) {
        List<GrooveRow> cut = grooves.getOrDefault(set.design, List.of());
        Map<String, RingRow> made =
                rings.getOrDefault(set.ringSet, List.of()).stream().collect(toMap(ring -> ring.groove, identity()));
        cut.stream()
                .filter(groove -> !made.containsKey(groove.groove))
                .forEach(groove -> examination.bad(set, "ring_set", Duty.RING_FOR_A_GROOVE, groove.groove));
        String names = cut.stream().map(groove -> groove.groove).collect(joining(", "));
        made.values().stream()
                .filter(ring -> cut.stream().noneMatch(groove -> groove.groove.equals(ring.groove)))
                .forEach(ring -> examination.bad(ring, "groove", Duty.GROOVE_FOR_A_RING, set.design, names));
    }
}
