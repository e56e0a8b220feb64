package org.borewright.api.lookup.gauge;

import org.borewright.api.shown.ShownGauge;
import org.borewright.catalog.Catalogue;
import org.borewright.measure.Gauge;
import org.borewright.measure.LengthUnit;

/**
 * One gauge of the register.
 *
 * @param gauge what it is worth
 * @param unit of the lengths
 * @param revision of the catalogue as to what fits
 */
public record GaugeAnswer(ShownGauge gauge, String unit, String revision) {

    static GaugeAnswer of(Gauge gauge, Catalogue catalogue, LengthUnit unit) {
        return new GaugeAnswer(
                ShownGauge.of(gauge, unit), unit.symbol(), catalogue.revision().fit());
    }
}
