package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import org.borewright.measure.Temperature.Scale;
import org.junit.jupiter.api.Test;

/**
 * The end gauge of JCGM 100:2008, H.1, told as a reading against a setting ring: the standard of 50 000 623 nm is the ring, the end gauge is
 * the hole, the difference of 215 nm is what was read beyond it. Uncertainties are asked in tenths of a nanometre, so that the guide's 9.7 nm
 * of the difference is a whole number; they grow in proportion.
 */
class EndGaugeTest {

    private static final Length STANDARD = Length.ofNanometres(50_000_623);
    private static final Length READ = Length.ofNanometres(50_000_623 + 215);
    private static final Temperature BENCH = Temperature.parse(new BigDecimal("19.9"), Scale.CELSIUS);

    /** H.1.3.4: α of the standard, and what it may differ from that of the gauge: ±1 × 10⁻⁶, rectangular, 0.58 × 10⁻⁶. */
    private static final Expansion STEEL = new Expansion(11.5e-6, 1e-6 / Math.sqrt(3));

    /** H.1.3.4: the two may differ by ±0.05 K, rectangular, 0.029 K. */
    private static final double TEMPERATURE_DIFFERENCE = 0.05 / Math.sqrt(3);

    /** H.1.6: l = 50 000 838 nm. */
    @Test
    void itsLengthIsThatOfTheGuide() {
        SettingRing ring = new SettingRing(STANDARD, BENCH, STEEL);
        assertThat(ring.growth()).isCloseTo(-57.5, within(0.01));
        assertThat(STEEL.atReference(READ, ring.growth(), BENCH)).isEqualTo(Length.ofNanometres(50_000_838));
    }

    /** H.1.3.1 to H.1.3.4, table H.1: 25 nm, 9.7 nm, 2.9 nm, and 16.6 nm for 0.029 K. */
    @Test
    void theComponentsAreThoseOfTheGuide() {
        Uncertainty budget = inTenths();
        assertThat(budget.gauge()).isEqualTo(250);
        assertThat(budget.repeatability()).isEqualTo(97);
        assertThat(budget.expansion()).isCloseTo(29, within(0.5));
        assertThat(budget.temperature() * TEMPERATURE_DIFFERENCE).isCloseTo(166, within(0.5));
    }

    /** H.1.4: u = 32 nm, 31.664 before rounding. */
    @Test
    void theCombinedUncertaintyIsThatOfTheGuide() {
        Uncertainty perKelvin = inTenths();
        Uncertainty budget = new Uncertainty(
                perKelvin.gauge(),
                perKelvin.resolution(),
                perKelvin.repeatability(),
                perKelvin.temperature() * TEMPERATURE_DIFFERENCE,
                perKelvin.expansion(),
                perKelvin.ring(),
                perKelvin.stated());
        assertThat(budget.combined()).isCloseTo(316.64, within(0.5));
        assertThat(budget.mattersMost()).isEqualTo(Uncertainty.Term.GAUGE);
    }

    /** The standard by its certificate: 0.075 µm at three standard uncertainties, so 25 nm; the difference 9.7 nm. */
    private static Uncertainty inTenths() {
        Gauge comparator = new Gauge(
                Gauge.Kind.MICROMETER,
                Optional.empty(),
                new Gauge.Calibration(Optional.of(Length.ofNanometres(2 * 250)), Optional.empty(), Optional.empty()),
                Optional.of(Length.ZERO),
                Length.ofNanometres(97),
                Optional.empty(),
                Gauge.Source.REQUEST);
        return Uncertainty.of(Length.ofNanometres(500_006_230), comparator, Climate.at(BENCH), STEEL);
    }
}
