package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Temperature.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class UncertaintyTest {

    /**
     * The end gauge: components of 25, 9.7, 2.9 and 16.6 nm give 32 nm, 31.664 before rounding (JCGM 100:2008, H.1.4). Four
     * components of 1 give 2 (JCGM 101, 9.2.2, table 2).
     */
    @ParameterizedTest
    @CsvSource({
        "25, 9.7, 16.6, 2.9, 31.664, 0.05",
        "1, 1, 1, 1, 2, 1e-12",
        "3, 0, 4, 0, 5, 1e-12",
        "0, 3, 0, 4, 5, 1e-12"
    })
    void componentsAddInSquares(
            double gauge, double resolution, double temperature, double expansion, double combined, double rounding) {
        assertThat(new Uncertainty(gauge, resolution, temperature, expansion).combined())
                .isCloseTo(combined, within(rounding));
    }

    /**
     * JCGM 100:2008, H.1: a gauge of 50.000 623 mm, standard uncertainty 25 nm, 0.1 K below 20 °C, α 11.5 × 10⁻⁶ and uncertain by
     * 0.58 × 10⁻⁶: 25 nm, 2.9 nm, and 16.6 nm for each 0.029 K.
     */
    @ParameterizedTest
    @CsvSource({"50.000623, 0.000050, 19.9, 11.5e-6, 0.58e-6, 25, 2.9, 0.05, 16.6"})
    void theComponentsOfAnEndGaugeAreThoseOfTheGuide(
            Length length,
            Length expanded,
            BigDecimal celsius,
            double perKelvin,
            double ofExpansion,
            double fromGauge,
            double fromExpansion,
            double halfWidth,
            double fromTemperature) {
        Uncertainty uncertainty = Uncertainty.of(
                length,
                new Gauge(expanded, Length.ZERO),
                Climate.at(Temperature.parse(celsius, Scale.CELSIUS)),
                new Expansion(perKelvin, ofExpansion));
        assertThat(uncertainty.gauge()).isEqualTo(fromGauge);
        assertThat(uncertainty.expansion()).isCloseTo(fromExpansion, within(0.05));
        assertThat(uncertainty.temperature() * halfWidth / Math.sqrt(3)).isCloseTo(fromTemperature, within(0.05));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/measure/uncertainty.csv", useHeadersInDisplayName = true)
    void aReadingIsWorthSoMuch(
            Length diameter,
            Length ofGauge,
            Length resolution,
            BigDecimal celsius,
            BigDecimal perKelvin,
            Length expanded) {
        Climate climate = celsius == null ? Climate.NOT_STATED : Climate.at(Temperature.parse(celsius, Scale.CELSIUS));
        Expansion material = new Expansion(perKelvin.movePointLeft(6).doubleValue(), Expansion.USUAL_UNCERTAINTY);
        assertThat(Uncertainty.of(diameter, new Gauge(ofGauge, resolution), climate, material)
                        .expanded())
                .isEqualTo(expanded);
    }

    /** 2·√2·resolution/√12 = resolution·√(2/3), rounded up: 0.816 497 of the step. */
    @ParameterizedTest
    @CsvSource({"0.001, 0.000817", "0.010, 0.008165", "0.002540, 0.002074", "0, 0", "0.000001, 0.000001"})
    void aDifferenceOfTwoReadingsKeepsOnlyTheStep(Length resolution, Length expanded) {
        assertThat(Uncertainty.ofDifference(new Gauge(Length.ofMicrometres(5), resolution)))
                .isEqualTo(expanded);
        assertThat(Uncertainty.ofDifference(new Gauge(Length.ofMicrometres(500), resolution)))
                .isEqualTo(expanded);
    }

    /** The square of the combined uncertainty is the sum of the squares of the terms (JCGM 100, 5.1.2), and none is larger than the largest. */
    @Property
    boolean noTermIsForgottenAndTheLargestMattersMost(
            @ForAll @DoubleRange(min = 0, max = 1e6) double gauge,
            @ForAll @DoubleRange(min = 0, max = 1e6) double resolution,
            @ForAll @DoubleRange(min = 0, max = 1e6) double temperature,
            @ForAll @DoubleRange(min = 0, max = 1e6) double expansion) {
        Uncertainty budget = new Uncertainty(gauge, resolution, temperature, expansion);
        double squares = 0;
        double largest = 0;
        for (Uncertainty.Term term : Uncertainty.Term.values()) {
            squares += budget.from(term) * budget.from(term);
            largest = Math.max(largest, budget.from(term));
        }
        return Math.abs(Math.sqrt(squares) - budget.combined()) <= 1e-9 * budget.combined()
                && budget.from(budget.mattersMost()) == largest;
    }

    @Property
    boolean theExpandedUncertaintyIsNeverShownSmaller(
            @ForAll @DoubleRange(min = 0, max = 1e6) double gauge,
            @ForAll @DoubleRange(min = 0, max = 1e6) double resolution,
            @ForAll @DoubleRange(min = 0, max = 1e6) double temperature,
            @ForAll @DoubleRange(min = 0, max = 1e6) double expansion) {
        Uncertainty uncertainty = new Uncertainty(gauge, resolution, temperature, expansion);
        double shown = uncertainty.expanded().nanometres();
        return shown >= 2 * uncertainty.combined() && shown < 2 * uncertainty.combined() + 1;
    }

    @Property
    boolean awayFromTwentyDegreesAReadingIsWorthNoMore(
            @ForAll @LongRange(min = 20_000_000, max = 200_000_000) long nanometres,
            @ForAll @IntRange(min = 0, max = 39) int kelvins,
            @ForAll boolean warmer) {
        int sign = warmer ? 1 : -1;
        Length near = at(nanometres, 20 + sign * kelvins);
        Length far = at(nanometres, 20 + sign * (kelvins + 1));
        return !far.isLessThan(near) && far.equals(at(nanometres, 20 - sign * (kelvins + 1)));
    }

    private static Length at(long nanometres, int celsius) {
        return Uncertainty.of(
                        Length.ofNanometres(nanometres),
                        Gauge.USUAL_BORE_GAUGE,
                        Climate.at(Temperature.parse(BigDecimal.valueOf(celsius), Scale.CELSIUS)),
                        new Expansion(11.4e-6, 1e-6))
                .expanded();
    }
}
