package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LengthUnitTest {

    /** The inch: 25.4 mm exactly (NIST SP 811, B.8). */
    @ParameterizedTest
    @CsvSource({"MILLIMETRE, mm, 1000000, 6, 6, 3", "INCH, in, 25400000, 5, 6, 4"})
    void eachUnitIsSoManyNanometres(LengthUnit unit, String symbol, long nanometres, int typed, int shown, int read) {
        assertThat(unit.symbol()).isEqualTo(symbol);
        assertThat(unit.nanometres()).isEqualTo(nanometres);
        assertThat(unit.typedDecimals()).isEqualTo(typed);
        assertThat(unit.shownDecimals()).isEqualTo(shown);
        assertThat(unit.gaugeDecimals()).isEqualTo(read);
    }

    @ParameterizedTest
    @EnumSource
    void theLastDigitTypedIsWholeNanometresAndOneMoreWouldNotBe(LengthUnit unit) {
        BigDecimal lastDigit = BigDecimal.valueOf(unit.nanometres(), unit.typedDecimals());
        assertThat(lastDigit).isEqualByComparingTo(BigDecimal.valueOf(unit.typedStep()));
        assertThat(lastDigit.movePointLeft(1).stripTrailingZeros().scale()).isPositive();
    }
}
