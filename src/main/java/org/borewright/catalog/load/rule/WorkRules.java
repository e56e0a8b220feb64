package org.borewright.catalog.load.rule;

import static java.util.stream.Collectors.toSet;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.borewright.catalog.store.row.FastenerRow;
import org.borewright.catalog.store.row.TorqueStageRow;
import org.borewright.fit.shape.MetricThread;

/** What fasteners owe their stages and the shop. */
final class WorkRules {

    private final Examination examination;
    private final Map<String, List<TorqueStageRow>> stages;
    private final Set<String> operations;

    private WorkRules(Examination examination) {
        this.examination = examination;
        this.stages = examination.rows(TorqueStageRow.class, row -> row.engine);
        this.operations = examination.sheets().of("shop_operations.csv").all().stream()
                .map(line -> line.cell("operation"))
                .collect(toSet());
    }

    static void check(Examination examination) {
        WorkRules rules = new WorkRules(examination);
        for (FastenerRow fastener : examination.rows(FastenerRow.class)) {
            rules.thread(fastener);
            if (examination.isWhole(TorqueStageRow.class, "engine", fastener.engine)) {
                rules.stages(fastener);
            }
            if (examination.sheets().of("shop_operations.csv").isWhole()) {
                rules.operations(fastener);
            }
        }
    }

    private void thread(FastenerRow fastener) {
        if (fastener.thread == null) {
            return;
        }
        try {
            new MetricThread(fastener.thread, fastener.pitch).stressArea();
        } catch (IllegalArgumentException unlike) {
            examination.bad(fastener, "pitch_mm", Duty.THREAD, String.valueOf(unlike.getMessage()));
        }
    }

    private void stages(FastenerRow fastener) {
        List<TorqueStageRow> own = stages.getOrDefault(fastener.engine, List.of()).stream()
                .filter(stage -> stage.fastener.equals(fastener.fastener))
                .toList();
        if (own.isEmpty()) {
            examination.bad(fastener, "fastener", Duty.STAGES);
        }
        own.stream()
                .filter(stage -> stage.stage == 1 && stage.angle != null)
                .forEach(stage -> examination.bad(stage, "angle_deg", Duty.FIRST_STAGE));
    }

    private void operations(FastenerRow fastener) {
        List<String> codes = List.of(fastener.operations.split(" "));
        codes.stream()
                .filter(code -> codes.indexOf(code) != codes.lastIndexOf(code))
                .distinct()
                .forEach(code -> examination.bad(fastener, "operations", Duty.OPERATION_ONCE, code));
        codes.stream()
                .filter(code -> !operations.contains(code))
                .forEach(code -> examination.bad(fastener, "operations", Duty.OPERATION, code));
    }
}
