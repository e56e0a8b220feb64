package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.borewright.measure.Temperature.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureTest {

    /** 1 °F = 5/9 K and 32 °F = 0 °C by definition; 20 °C = 68 °F exactly, ISO 1:2022. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            68,      20
            77,      25
            59,      15
            32,      0
            212,     100
            -40,     -40
            -76,     -60
            392,     200
            70.7,    21.5
            68.009,  20.005
            """)
    void fahrenheitAndCelsiusAreTheSameTemperature(BigDecimal fahrenheit, BigDecimal celsius) {
        assertThat(Temperature.parse(fahrenheit, Scale.FAHRENHEIT))
                .isEqualTo(Temperature.parse(celsius, Scale.CELSIUS));
    }

    @Property
    boolean everyTypedCelsiusHasItsFahrenheit(@ForAll @IntRange(min = -60_000, max = 200_000) int thousandths) {
        BigDecimal celsius = BigDecimal.valueOf(thousandths / 5 * 5L, 3);
        BigDecimal fahrenheit = celsius.multiply(new BigDecimal("1.8")).add(new BigDecimal("32"));
        return Temperature.parse(fahrenheit, Scale.FAHRENHEIT).equals(Temperature.parse(celsius, Scale.CELSIUS));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            20.0001,       CELSIUS,    three decimals
            68.0001,       FAHRENHEIT, three decimals
            1E-999999999,  CELSIUS,    three decimals
            -60.001,       CELSIUS,    outside −60 to 200 °C
            200.001,       CELSIUS,    outside −60 to 200 °C
            -76.001,       FAHRENHEIT, outside −60 to 200 °C
            392.001,       FAHRENHEIT, outside −60 to 200 °C
            1000.001,      FAHRENHEIT, outside −60 to 200 °C
            1E+999999999,  CELSIUS,    outside −60 to 200 °C
            -1E+999999999, FAHRENHEIT, outside −60 to 200 °C
            """)
    void whatNoThermometerShowsIsRefused(BigDecimal typed, Scale scale, String reason) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Temperature.parse(typed, scale))
                .withMessageContaining(reason)
                .withMessageStartingWith(typed + " °" + scale.symbol())
                .satisfies(refusal -> assertThat(refusal.getMessage().length()).isLessThan(100));
    }

    @ParameterizedTest
    @CsvSource({"CELSIUS, C", "FAHRENHEIT, F"})
    void aScaleIsWrittenByItsLetter(Scale scale, String letter) {
        assertThat(scale.symbol()).isEqualTo(letter);
    }

    @ParameterizedTest
    @CsvSource({"-60, CELSIUS, -540000", "200, CELSIUS, 1800000", "20.000, CELSIUS, 180000", "68, FAHRENHEIT, 180000"})
    void isKeptInNinthsOfAMillikelvin(BigDecimal typed, Scale scale, long ninths) {
        assertThat(Temperature.parse(typed, scale)).isEqualTo(new Temperature(ninths));
    }

    /** 70 to 90 °F is printed as 21 to 32 °C in TM 9-2815-226-34-1. */
    @ParameterizedTest
    @CsvSource({
        "20, CELSIUS, 0",
        "26, CELSIUS, 6",
        "-60, CELSIUS, -80",
        "70, FAHRENHEIT, 1.111111",
        "90, FAHRENHEIT, 12.222222"
    })
    void standsSoManyKelvinsAboveTheReference(BigDecimal typed, Scale scale, double kelvins) {
        assertThat(Temperature.parse(typed, scale).kelvinsAboveReference()).isCloseTo(kelvins, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            25,      CELSIUS,    false
            25.001,  CELSIUS,    true
            24.999,  CELSIUS,    false
            15,      CELSIUS,    false
            14.999,  CELSIUS,    true
            20,      CELSIUS,    false
            77,      FAHRENHEIT, false
            77.001,  FAHRENHEIT, true
            59,      FAHRENHEIT, false
            58.999,  FAHRENHEIT, true
            """)
    void isFarFromTheReferenceBeyondFiveKelvinsExactly(BigDecimal typed, Scale scale, boolean far) {
        assertThat(Temperature.parse(typed, scale).isFurtherFromReferenceThan(5))
                .isEqualTo(far);
    }

    @Property
    boolean theWarmerComesLater(
            @ForAll @IntRange(min = -60_000, max = 200_000) int first,
            @ForAll @IntRange(min = -60_000, max = 200_000) int second) {
        Temperature one = Temperature.parse(BigDecimal.valueOf(first, 3), Scale.CELSIUS);
        Temperature other = Temperature.parse(BigDecimal.valueOf(second, 3), Scale.CELSIUS);
        return Integer.signum(one.compareTo(other)) == Integer.compare(first, second);
    }

    @ParameterizedTest
    @CsvSource({
        "22, 27, false",
        "22, 27.001, true",
        "27, 22, false",
        "27.001, 22, true",
        "-3, 2, false",
        "-3.001, 2, true"
    })
    void isFarFromAnotherBeyondFiveKelvinsExactly(BigDecimal one, BigDecimal other, boolean far) {
        assertThat(Temperature.parse(one, Scale.CELSIUS).isFurtherThan(5, Temperature.parse(other, Scale.CELSIUS)))
                .isEqualTo(far);
    }
}
