package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Temperature.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ExpansionTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/measure/temperature.csv", useHeadersInDisplayName = true)
    void aPartIsTurnedBackToTwentyDegrees(
            Length measured, BigDecimal celsius, BigDecimal perKelvin, Length atReference) {
        Expansion material = new Expansion(perKelvin.movePointLeft(6).doubleValue(), Expansion.USUAL_UNCERTAINTY);
        assertThat(material.atReference(measured, Temperature.parse(celsius, Scale.CELSIUS)))
                .isEqualTo(atReference);
    }

    /** At −60 °C and the largest coefficient a length is divided by 0.992 = 124/125: 62 nm are 62.5 nm at 20 °C. */
    @ParameterizedTest
    @CsvSource({"62, 62", "186, 188", "310, 312", "434, 438", "-62, -62", "-186, -188"})
    void halfANanometreGoesToTheEvenOne(long measured, long atReference) {
        assertThat(new Expansion(1e-4, 0).atReference(Length.ofNanometres(measured), Temperature.COLDEST))
                .isEqualTo(Length.ofNanometres(atReference));
    }

    @Property
    boolean atTwentyDegreesNothingChanges(
            @ForAll @LongRange(min = 0, max = 10_000_000_000L) long nanometres,
            @ForAll @IntRange(min = 0, max = 1000) int tenMillionths) {
        Length length = Length.ofNanometres(nanometres);
        return new Expansion(tenMillionths / 1e7, 0)
                .atReference(length, Temperature.REFERENCE)
                .equals(length);
    }

    @Property
    boolean theWarmerAPartReadsTheSmallerItIs(
            @ForAll @LongRange(min = 20_000_000, max = 200_000_000) long nanometres,
            @ForAll @IntRange(min = -60_000, max = 199_000) int thousandths,
            @ForAll @IntRange(min = 100, max = 1000) int tenMillionths) {
        Expansion material = new Expansion(tenMillionths / 1e7, 0);
        Length read = Length.ofNanometres(nanometres);
        Length cool = material.atReference(read, new Temperature(thousandths * 9L));
        Length warm = material.atReference(read, new Temperature((thousandths + 1_000) * 9L));
        return warm.isLessThan(cool);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1e-4, 1e-4", "11.4e-6, 1e-6"})
    void theLimitsOfTheCoefficientAreInclusive(double perKelvin, double standardUncertainty) {
        Expansion material = new Expansion(perKelvin, standardUncertainty);
        assertThat(material.perKelvin()).isEqualTo(perKelvin);
        assertThat(material.standardUncertainty()).isEqualTo(standardUncertainty);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            -1e-12,   1e-6,     expansion -1.0E-12
            1.001e-4, 1e-6,     expansion 1.001E-4
            NaN,      1e-6,     expansion NaN
            Infinity, 1e-6,     expansion Infinity
            1e-5,     -1e-12,   uncertainty -1.0E-12
            1e-5,     1.001e-4, uncertainty 1.001E-4
            1e-5,     NaN,      uncertainty NaN
            """)
    void whatNoMetalDoesIsRefused(double perKelvin, double standardUncertainty, String reason) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Expansion(perKelvin, standardUncertainty))
                .withMessageContaining(reason)
                .withMessageContaining("outside 0 to 1e-4 per kelvin");
    }

    @Property
    boolean aLimitAsReadComesBackAtMostAsItselfAndAtMostTwoNanometresLess(
            @ForAll @LongRange(min = 0, max = 1_000_000_000L) long nanometres,
            @ForAll @IntRange(min = -60_000, max = 200_000) int thousandths,
            @ForAll @IntRange(min = 0, max = 1000) int tenMillionths) {
        Expansion material = new Expansion(tenMillionths / 1e7, 0);
        Temperature temperature = new Temperature(thousandths * 9L);
        Length limit = Length.ofNanometres(nanometres);
        Length back = material.atReference(material.asRead(limit, temperature), temperature);
        return !back.isMoreThan(limit) && limit.minus(back).nanometres() <= 2;
    }

    /** 35 mm of grey iron, 11.4 × 10⁻⁶ /K: 10 K cooler it is shorter by 3 990 nm, 10 K warmer it is longer by as much. */
    @ParameterizedTest
    @CsvSource({"10, 34.996010", "20, 35.000000", "30, 35.003990"})
    void aLimitIsTurnedIntoTheReadingOfADay(BigDecimal celsius, Length asRead) {
        Expansion iron = new Expansion(11.4e-6, 0);
        assertThat(iron.asRead(Length.parseMillimetres("35"), Temperature.parse(celsius, Scale.CELSIUS)))
                .isEqualTo(asRead);
    }
}
