package org.borewright.catalog.load.rule;

import org.borewright.catalog.store.row.GaugeRow;

/** What a gauge owes its own calibration. */
final class GaugeRules {

    private GaugeRules() {}

    static void check(Examination examination) {
        examination.rows(GaugeRow.class).stream()
                .filter(gauge -> gauge.due != null && gauge.due.isBefore(gauge.calibratedOn))
                .forEach(gauge -> examination.bad(gauge, "due", Duty.DUE, gauge.calibratedOn));
    }
}
