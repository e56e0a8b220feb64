package org.borewright.api.shown;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.borewright.measure.Climate;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.SettingRing;
import org.jspecify.annotations.Nullable;

/**
 * What a gauge is worth, and who says so.
 *
 * @param kind of instrument
 * @param name what the shop calls it; absent when not named
 * @param uncertainty expanded uncertainty of its calibration
 * @param uncertaintySource where that figure comes from
 * @param resolution its smallest step
 * @param resolutionSource where that figure comes from
 * @param repeatability the standard deviation of one reading; absent when not stated
 * @param calibratedOn the day of its calibration; absent when not stated
 * @param due the last day that holds; absent when not stated
 * @param ringGrowth what the setting ring had grown and every diameter gained; absent without a ring
 * @param ring that it was zeroed on; absent likewise
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ShownGauge(
        String kind,
        @Nullable String name,
        ShownLength uncertainty,
        String uncertaintySource,
        ShownLength resolution,
        String resolutionSource,
        @Nullable ShownLength repeatability,
        @Nullable LocalDate calibratedOn,
        @Nullable LocalDate due,
        @Nullable ShownLength ringGrowth,
        @Nullable ShownRing ring) {

    /**
     * The ring that a gauge was zeroed on.
     *
     * @param size as marked
     * @param celsius how warm it was, to a thousandth of a degree
     * @param expansion of its material, in millionths per kelvin
     * @param expansionUncertainty the standard uncertainty of that
     */
    public record ShownRing(
            ShownLength size, BigDecimal celsius, BigDecimal expansion, BigDecimal expansionUncertainty) {

        static ShownRing of(SettingRing ring, LengthUnit unit) {
            ShownCorrection warm = ShownCorrection.of(Climate.at(ring.temperature()), ring.expansion());
            return new ShownRing(
                    ShownLength.of(ring.size(), unit), warm.celsius(), warm.expansion(), warm.expansionUncertainty());
        }
    }

    /** A gauge, its lengths in a unit. */
    public static ShownGauge of(Gauge gauge, LengthUnit unit) {
        Gauge.Calibration calibration = gauge.calibration();
        boolean scatters = gauge.repeatability().isMoreThan(Length.ZERO);
        return new ShownGauge(
                gauge.kind().label(),
                gauge.name().orElse(null),
                ShownLength.of(gauge.expandedUncertainty(), unit, Flattery.UNCERTAINTY),
                gauge.uncertaintySource().label(),
                ShownLength.of(gauge.resolution(), unit, Flattery.UNCERTAINTY),
                gauge.resolutionSource().label(),
                scatters ? ShownLength.of(gauge.repeatability(), unit, Flattery.UNCERTAINTY) : null,
                calibration.on().orElse(null),
                calibration.due().orElse(null),
                gauge.ring()
                        .map(ring -> ShownLength.of(Length.ofNanometres((long) Math.rint(ring.growth())), unit))
                        .orElse(null),
                gauge.ring().map(ring -> ShownRing.of(ring, unit)).orElse(null));
    }
}
