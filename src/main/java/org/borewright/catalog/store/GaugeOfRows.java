package org.borewright.catalog.store;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.store.row.GaugeRow;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;

/** The register of gauges, from its rows. */
final class GaugeOfRows {

    private GaugeOfRows() {}

    static List<Gauge> register(CatalogRows rows) {
        return rows.of(GaugeRow.class).stream().map(GaugeOfRows::gauge).toList();
    }

    /** A ring belongs to the day it was used, not to the register. */
    private static Gauge gauge(GaugeRow row) {
        return new Gauge(
                row.kind,
                Optional.of(row.name),
                new Gauge.Calibration(
                        Optional.ofNullable(row.uncertainty),
                        Optional.ofNullable(row.calibratedOn),
                        Optional.ofNullable(row.due)),
                Optional.of(row.resolution),
                Optional.ofNullable(row.repeatability).orElse(Length.ZERO),
                Optional.empty(),
                Gauge.Source.REGISTER);
    }
}
