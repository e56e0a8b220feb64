package org.borewright.api.lookup.gauge;

import java.util.List;
import org.borewright.api.shown.ShownGauge;
import org.borewright.catalog.Catalogue;
import org.borewright.measure.LengthUnit;

/**
 * The whole register of gauges.
 *
 * @param gauges sorted by name
 * @param unit of the lengths
 * @param revision of the catalogue as to what fits
 */
public record GaugesAnswer(List<ShownGauge> gauges, String unit, String revision) {

    static GaugesAnswer of(Catalogue catalogue, LengthUnit unit) {
        return new GaugesAnswer(
                catalogue.gauges().values().stream()
                        .map(gauge -> ShownGauge.of(gauge, unit))
                        .toList(),
                unit.symbol(),
                catalogue.revision().fit());
    }
}
