package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AmountTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            10,             10000000
            10.0000000001,  10000001
            10.7872694,     10787270
            10.9999999,     11000000
            0,              0
            Infinity,       9223372036854775807
            """)
    void aRatioGoesUpToTheNextMillionth(double ratio, long millionths) {
        assertThat(Amount.ratioRoundedUp(ratio)).isEqualTo(new Amount(millionths, Quantity.RATIO));
    }

    @ParameterizedTest
    @CsvSource({"10, 10000000", "9.9999999999, 9999999", "10.7872694, 10787269", "0, 0", "Infinity, 9223372036854775807"
    })
    void theLowestRatioGoesDownToTheMillionth(double ratio, long millionths) {
        assertThat(Amount.ratioRoundedDown(ratio)).isEqualTo(new Amount(millionths, Quantity.RATIO));
    }

    /** No other quantity is, however large. */
    @ParameterizedTest
    @CsvSource({
        "9223372036854775807, RATIO, true",
        "9223372036854775806, RATIO, false",
        "9223372036854775807, LENGTH, false"
    })
    void aRatioIsEndlessWhereNoRoomIsLeft(long units, Quantity quantity, boolean endless) {
        assertThat(new Amount(units, quantity).isEndless()).isEqualTo(endless);
    }

    @ParameterizedTest
    @CsvSource({"0.9, 900000", "0.9000000001, 900001", "1, 1000000", "1.0000000001, 1000001", "0.25, 250000"})
    void aShareGoesUpToTheNextTenThousandthOfAPerCent(double share, long units) {
        assertThat(Amount.perCentRoundedUp(share)).isEqualTo(new Amount(units, Quantity.PER_CENT));
    }

    @Property
    boolean roundingUpNeverFlatters(@ForAll @DoubleRange(min = 0, max = 30) double ratio) {
        double shown = Amount.ratioRoundedUp(ratio).units();
        return shown >= ratio * 1e6 && shown < ratio * 1e6 + 1;
    }

    @ParameterizedTest
    @CsvSource({"70.260001, 70260001", "-0.000001, -1", "0, 0"})
    void aLengthIsItsNanometres(Length length, long units) {
        assertThat(Amount.of(length)).isEqualTo(new Amount(units, Quantity.LENGTH));
    }

    @ParameterizedTest
    @CsvSource({"252000", "0"})
    void aMassIsItsMilligrams(long milligrams) {
        assertThat(Amount.ofMilligrams(milligrams)).isEqualTo(new Amount(milligrams, Quantity.MASS));
    }

    static Stream<DoubleFunction<Amount>> roundedUp() {
        return Stream.of(Amount::ratioRoundedUp, Amount::ratioRoundedDown, Amount::perCentRoundedUp);
    }

    @ParameterizedTest
    @MethodSource("roundedUp")
    void whatIsNotANumberIsRefused(DoubleFunction<Amount> amount) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> amount.apply(Double.NaN))
                .withMessage("not a number");
    }
}
