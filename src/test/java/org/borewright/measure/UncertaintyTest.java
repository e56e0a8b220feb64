package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Temperature.Scale;
import org.borewright.measure.Uncertainty.Term;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class UncertaintyTest {

    /**
     * The end gauge: components of 25, 9.7, 2.9 and 16.6 nm give 32 nm, 31.664 before rounding (JCGM 100:2008, H.1.4). Four
     * components of 1 give 2 (JCGM 101, 9.2.2, table 2); the rest is 3, 4, 5.
     */
    @ParameterizedTest
    @CsvSource({
        "25, 0, 9.7, 16.6, 2.9, 0, 31.664, 0.05",
        "1, 1, 0, 1, 1, 0, 2, 1e-12",
        "0, 1, 1, 0, 1, 1, 2, 1e-12",
        "3, 0, 0, 4, 0, 0, 5, 1e-12",
        "0, 3, 0, 0, 4, 0, 5, 1e-12",
        "0, 0, 3, 0, 0, 4, 5, 1e-12"
    })
    void componentsAddInSquares(ArgumentsAccessor row) {
        Uncertainty budget = new Uncertainty(
                row.getDouble(0),
                row.getDouble(1),
                row.getDouble(2),
                row.getDouble(3),
                row.getDouble(4),
                row.getDouble(5),
                0);
        assertThat(budget.combined()).isCloseTo(row.getDouble(6), within(row.getDouble(7)));
    }

    @Property
    void aLargerHoleIsWorthWhatItWouldBeWorthReadItself(
            @ForAll @LongRange(min = 40_000_000, max = 120_000_000) long one,
            @ForAll @LongRange(min = 40_000_000, max = 120_000_000) long other) {
        Climate climate = Climate.at(Temperature.parse(BigDecimal.valueOf(26), Scale.CELSIUS));
        Expansion material = new Expansion(11.4e-6, Expansion.USUAL_UNCERTAINTY);
        Gauge gauge = gauge(Length.ofMicrometres(5), Length.ofMicrometres(1), Length.ofMicrometres(1));
        Uncertainty scaled = Uncertainty.of(Length.ofNanometres(one), gauge, climate, material)
                .scaled((double) other / one);
        assertThat(scaled.combined())
                .isCloseTo(
                        Uncertainty.of(Length.ofNanometres(other), gauge, climate, material)
                                .combined(),
                        within(1e-6));
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
        assertThat(Uncertainty.of(diameter, gauge(ofGauge, resolution, Length.ZERO), climate, material)
                        .expanded())
                .isEqualTo(expanded);
    }

    /** 2·√2·√(resolution²/12 + repeatability²): the step alone counts 0.816 497 of itself, the scatter alone 2.828 427; rounded up. */
    @ParameterizedTest
    @CsvSource({
        "0.001, 0, 0.000817",
        "0.010, 0, 0.008165",
        "0.002540, 0, 0.002074",
        "0, 0, 0",
        "0.000001, 0, 0.000001",
        "0, 0.001, 0.002829",
        "0.001, 0.001, 0.002944"
    })
    void aDifferenceOfTwoReadingsKeepsOnlyStepAndScatter(Length resolution, Length repeatability, Length expanded) {
        for (int calibrated : List.of(5, 500)) {
            Gauge gauge = gauge(Length.ofMicrometres(calibrated), resolution, repeatability);
            assertThat(Uncertainty.of(
                                    Length.parseMillimetres("70"),
                                    gauge,
                                    Climate.NOT_STATED,
                                    new Expansion(11e-6, 1e-6))
                            .expandedOfDifference())
                    .isEqualTo(expanded);
        }
    }

    /** 3, 4, 5 and 5, 12, 13; the root of 2 is 1.414 214. */
    @ParameterizedTest
    @CsvSource({
        "0.003, 0.004, 0.005",
        "0.012, 0.005, 0.013",
        "0.005, 0, 0.005",
        "0, 0.003, 0.003",
        "0, 0, 0",
        "0.001, 0.001, 0.001415"
    })
    void twoLengthsMeasuredApartAddInSquares(Length one, Length other, Length together) {
        assertThat(Uncertainty.ofApart(one, other)).isEqualTo(together);
    }

    /** What another gauge or 20 °C would leave of it: the temperature was not stated, and the ring was warm. */
    @Test
    void anotherGaugeAndTwentyDegreesEachLeaveTheRest() {
        Uncertainty budget = new Uncertainty(5, 4, 3, 29, 7, 6, 10);

        assertThat(budget.withCalibration(Length.ofNanometres(4))).isEqualTo(new Uncertainty(2, 4, 3, 29, 7, 6, 10));
        assertThat(budget.withGaugeWorth(Length.ofNanometres(2)).combined())
                .isEqualTo(new Uncertainty(2, 0, 0, 29, 7, 6, 10).combined());
        assertThat(budget.atReference()).isEqualTo(new Uncertainty(5, 4, 3, 10, 0, 0, 10));
    }

    @ParameterizedTest(name = "worth no more than {0} nm: {1} nm")
    @CsvSource({"9, 5", "10, 5", "11, 5.5", "40, 20"})
    void aGaugeThatIsWorthLessCounts(int expanded, double gauge) {
        Uncertainty budget = new Uncertainty(5, 4, 3, 29, 7, 6, 10);

        assertThat(budget.withCalibrationNoBetterThan(Length.ofNanometres(expanded)))
                .isEqualTo(new Uncertainty(gauge, 4, 3, 29, 7, 6, 10));
    }

    /** 70 mm, 10 × 10⁻⁶ /K: 1 K is worth 700 nm, and 5/√3 K as much more. */
    @ParameterizedTest
    @CsvSource({"20, 700", "31, 700", ", 2020.725942"})
    void aTemperatureThatIsStatedLeavesOneKelvin(BigDecimal celsius, double nanometres) {
        Climate climate = celsius == null ? Climate.NOT_STATED : Climate.at(Temperature.parse(celsius, Scale.CELSIUS));
        Uncertainty budget = Uncertainty.of(
                Length.parseMillimetres("70"), Gauge.Kind.BORE_GAUGE.usual(), climate, new Expansion(10e-6, 0));

        assertThat(budget.temperature()).isCloseTo(nanometres, within(1e-6));
        assertThat(budget.stated()).isCloseTo(700, within(1e-9));
        assertThat(budget.scaled(2).stated()).isCloseTo(1400, within(1e-9));
    }

    /** U of a certificate is two standard uncertainties (k = 2). */
    @Test
    void ofACertificateAloneTheCalibrationIsAllThereIs() {
        assertThat(Uncertainty.ofCalibration(Length.ofNanometres(5000)))
                .isEqualTo(new Uncertainty(2500, 0, 0, 0, 0, 0, 0));
    }

    @Test
    void ofEqualTermsTheFirstMattersMost() {
        assertThat(new Uncertainty(3, 3, 3, 3, 3, 3, 0).mattersMost()).isEqualTo(Term.GAUGE);
        assertThat(new Uncertainty(3, 4, 4, 3, 4, 3, 0).mattersMost()).isEqualTo(Term.RESOLUTION);
    }

    @ParameterizedTest
    @CsvSource({
        "GAUGE, gauge, smaller calibration uncertainty",
        "RESOLUTION, resolution, finer step",
        "REPEATABILITY, repeatability, mean of several readings",
        "TEMPERATURE, temperature, come to one temperature",
        "EXPANSION, expansion, nearer to 20 °C",
        "RING, ring, setting ring come to 20 °C"
    })
    void eachTermSaysWhatMakesItSmaller(Term term, String label, String wayOut) {
        assertThat(term.label()).isEqualTo(label);
        assertThat(term.wayOut()).contains(wayOut);
    }

    private static Gauge gauge(Length expanded, Length resolution, Length repeatability) {
        return new Gauge(
                Gauge.Kind.BORE_GAUGE,
                Optional.empty(),
                new Gauge.Calibration(Optional.of(expanded), Optional.empty(), Optional.empty()),
                Optional.of(resolution),
                repeatability,
                Optional.empty(),
                Gauge.Source.REQUEST);
    }

    /** The square of the combined uncertainty is the sum of the squares of the terms (JCGM 100, 5.1.2), and none is larger than the largest. */
    @Property
    boolean noTermIsForgottenAndTheLargestMattersMost(
            @ForAll @DoubleRange(min = 0, max = 1e6) double gauge,
            @ForAll @DoubleRange(min = 0, max = 1e6) double resolution,
            @ForAll @DoubleRange(min = 0, max = 1e6) double repeatability,
            @ForAll @DoubleRange(min = 0, max = 1e6) double temperature,
            @ForAll @DoubleRange(min = 0, max = 1e6) double expansion,
            @ForAll @DoubleRange(min = 0, max = 1e6) double ring) {
        Uncertainty budget = new Uncertainty(gauge, resolution, repeatability, temperature, expansion, ring, 0);
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
            @ForAll @DoubleRange(min = 0, max = 1e6) double repeatability,
            @ForAll @DoubleRange(min = 0, max = 1e6) double temperature,
            @ForAll @DoubleRange(min = 0, max = 1e6) double expansion,
            @ForAll @DoubleRange(min = 0, max = 1e6) double ring) {
        Uncertainty uncertainty = new Uncertainty(gauge, resolution, repeatability, temperature, expansion, ring, 0);
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
                        Gauge.Kind.BORE_GAUGE.usual(),
                        Climate.at(Temperature.parse(BigDecimal.valueOf(celsius), Scale.CELSIUS)),
                        new Expansion(11.4e-6, 1e-6))
                .expanded();
    }
}
