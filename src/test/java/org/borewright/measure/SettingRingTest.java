package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.borewright.measure.Temperature.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingRingTest {

    /**
     * 100 mm of steel grow 1.15 µm in 1 K (Swyt, Journal of Research of NIST 99, 1994). Uncertain by S·α·1 K, 1 150 nm, and by 100 nm
     * for each kelvin of the material: worked out in squares.
     */
    @ParameterizedTest
    @CsvSource({
        "100.000, 21, 1150, 1154.34",
        "100.000, 19, -1150, 1154.34",
        "100.000, 20, 0, 1150",
        "80.000, 26, 5520, 1037.69",
        "80.000, -4, -22080, 2129.04"
    })
    void aRingGrowsWithItsTemperature(Length size, BigDecimal celsius, double growth, double standardUncertainty) {
        SettingRing ring = new SettingRing(size, Temperature.parse(celsius, Scale.CELSIUS), SettingRing.STEEL);
        assertThat(ring.growth()).isCloseTo(growth, within(1e-6));
        assertThat(ring.standardUncertainty()).isCloseTo(standardUncertainty, within(0.005));
    }

    /** A gauge zeroed on a ring of 80.000 mm at 26 °C shows 80.000 in a hole of 80.005 520 at 26 °C; worked out in decimals of forty digits. */
    @ParameterizedTest
    @CsvSource({"80.000, 26, 21.5e-6, 79.995201", "80.000, 26, 11.4e-6, 80.000048", "80.000, 20, 11.4e-6, 80.005520"})
    void whatTheRingHadGrownGoesOn(Length read, BigDecimal celsius, double perKelvin, Length atReference) {
        Temperature warm = Temperature.parse(new BigDecimal(26), Scale.CELSIUS);
        SettingRing ring = new SettingRing(Length.parseMillimetres("80.000"), warm, SettingRing.STEEL);
        assertThat(new Expansion(perKelvin, 0)
                        .atReference(read, ring.growth(), Temperature.parse(celsius, Scale.CELSIUS)))
                .isEqualTo(atReference);
    }

    /** The other way about: in iron at 26 °C, 80.000 mm at 20 °C shows 80.005 472 less the 0.005 520 that the ring had grown. */
    @ParameterizedTest
    @CsvSource({"26, 79.999952", "20, 80.000000"})
    void aHoleShowsLessByWhatTheRingHadGrown(BigDecimal celsius, Length read) {
        Temperature warm = Temperature.parse(celsius, Scale.CELSIUS);
        SettingRing ring = new SettingRing(Length.parseMillimetres("80.000"), warm, SettingRing.STEEL);
        assertThat(new Expansion(11.4e-6, 0).asRead(Length.parseMillimetres("80.000"), ring.growth(), warm))
                .isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource({"0", "-0.000001"})
    void aRingWithoutASizeIsRefused(Length size) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SettingRing(size, Temperature.REFERENCE, SettingRing.STEEL))
                .withMessageContaining(size.toString());
    }
}
