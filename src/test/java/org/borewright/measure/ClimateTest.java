package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.borewright.measure.Temperature.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClimateTest {

    @ParameterizedTest
    @CsvSource({"20, false", "25, false", "25.001, true", "15, false", "14.999, true", "-10, true"})
    void aStatedTemperatureIsWorthOneKelvinAndFarBeyondFive(BigDecimal celsius, boolean far) {
        Temperature stated = Temperature.parse(celsius, Scale.CELSIUS);
        Climate climate = Climate.at(stated);
        assertThat(climate.temperature()).isEqualTo(stated);
        assertThat(climate.standardUncertainty()).isEqualTo(1);
        assertThat(climate.isFarFromReference()).isEqualTo(far);
    }

    /** ± 5 °C rectangular: the variance is a²/3 (JCGM 100, 4.3.7). */
    @Test
    void aTemperatureNobodyWroteDownIsTwentyPlusOrMinusFive() {
        assertThat(Climate.NOT_STATED.temperature()).isEqualTo(Temperature.REFERENCE);
        assertThat(Climate.NOT_STATED.standardUncertainty()).isCloseTo(2.886_751, within(1e-6));
        assertThat(Climate.NOT_STATED.isFarFromReference()).isFalse();
    }
}
