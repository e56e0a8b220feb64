package org.borewright.api.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Temperature;
import org.borewright.measure.Temperature.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownCorrectionTest {

    /** 72 °F are 22.222 °C; nobody's word is 20 °C. */
    @ParameterizedTest
    @CsvSource({
        "26, CELSIUS, 26.0, true",
        "-7.125, CELSIUS, -7.125, true",
        "72, FAHRENHEIT, 22.222, true",
        "68, FAHRENHEIT, 20.0, true",
        ", , 20.0, false"
    })
    void theTemperatureIsShownInDegreesCelsiusWhateverWasTyped(
            BigDecimal typed, Scale scale, BigDecimal celsius, boolean stated) {
        Climate climate = typed == null ? Climate.NOT_STATED : Climate.at(Temperature.parse(typed, scale));
        assertThat(ShownCorrection.of(climate, new Expansion(11.4e-6, 3e-6)))
                .isEqualTo(new ShownCorrection(celsius, stated, new BigDecimal("11.4"), new BigDecimal("3.0")));
    }
}
