package org.borewright.measure;

import java.util.Locale;

/**
 * What an instrument is worth.
 *
 * @param expandedUncertainty U of its calibration with k = 2; not negative
 * @param resolution its smallest step; not negative
 */
public record Gauge(Length expandedUncertainty, Length resolution) {

    /** A dial bore gauge zeroed on a master, where no gauge is named: U 0.005 mm, step 0.001 mm (common practice). */
    public static final Gauge USUAL_BORE_GAUGE = new Gauge(Length.ofMicrometres(5), Length.ofMicrometres(1));

    /** A micrometer for pistons, where none is named: U 0.003 mm, step 0.001 mm (common practice). */
    public static final Gauge USUAL_MICROMETER = new Gauge(Length.ofMicrometres(3), Length.ofMicrometres(1));

    /** @throws IllegalArgumentException if either is negative */
    public Gauge {
        if (expandedUncertainty.isNegative() || resolution.isNegative()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "a gauge of uncertainty %s and resolution %s", expandedUncertainty, resolution));
        }
    }
}
