package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlipTest {

    /** Smallest new bore 70.000 − 0.10 to largest finish 71.030 + 0.50 mm. */
    private static final Limits PLAUSIBLE = new Limits(Length.ofMicrometres(69_900), Length.ofMicrometres(71_530));

    @ParameterizedTest
    @CsvSource(textBlock = """
            7.0110,    MILLIMETRE, 70.11,            the decimal point one place too far left
            701.10,    MILLIMETRE, 70.11,            the decimal point one place too far right
            2.76,      MILLIMETRE, 70.104,           inches typed as millimetres
            1780.794,  MILLIMETRE, 70.11,            millimetres typed as inches
            70.104,    INCH,       2.76,             millimetres typed as inches
            70.12,     INCH,       2.76063,          millimetres typed as inches
            27.6,      INCH,       2.76,             the decimal point one place too far right
            27.60125,  INCH,       2.76012,          the decimal point one place too far right
            0.276,     INCH,       2.76,             the decimal point one place too far left
            17.02,     MILLIMETRE, 71.02,            two digits exchanged
            74.03,     MILLIMETRE, 70.43,            two digits exchanged
            0.27600000000000000000, INCH, 2.76,      the decimal point one place too far left
            """)
    void theOneCorrectionThatFitsIsSuggested(BigDecimal typed, LengthUnit unit, BigDecimal meant, String slip) {
        assertThat(Slip.suggest(typed, unit, PLAUSIBLE)).hasValueSatisfying(suggestion -> {
            assertThat(suggestion.value()).isEqualByComparingTo(meant);
            assertThat(suggestion.slip()).isEqualTo(slip);
        });
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            50.000,         MILLIMETRE, nothing comes near
            0,              MILLIMETRE, nothing comes near
            -70.110,        MILLIMETRE, the sign is no slip of these
            79.01,          MILLIMETRE, two exchanges fit: 70.91 and 71.09
            1E-999999999,   MILLIMETRE, nobody types that
            1E+999999999,   INCH,       nobody types that
            701.1000000000000000000000, MILLIMETRE, more than twenty digits
            """)
    void whereNoneOrSeveralFitNothingIsSuggested(BigDecimal typed, LengthUnit unit) {
        assertThat(Slip.suggest(typed, unit, PLAUSIBLE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            6.9900000, true
            6.9899999, false
            7.1530000, true
            7.1530001, false
            """)
    void theCorrectionMustLieInThePlausibleRange(BigDecimal typed, boolean suggested) {
        assertThat(Slip.suggest(typed, LengthUnit.MILLIMETRE, PLAUSIBLE).isPresent())
                .isEqualTo(suggested);
    }

    /** A range that no engine has, so that only the 10 m that can be typed stand in the way. */
    @ParameterizedTest
    @CsvSource({"1000, true", "1000.000001, false"})
    void theCorrectionMustBeALengthThatCanBeTyped(BigDecimal typed, boolean suggested) {
        Limits tenToTwentyMetres = new Limits(Length.LONGEST_TYPED, Length.LONGEST_TYPED.doubled());
        assertThat(Slip.suggest(typed, LengthUnit.MILLIMETRE, tenToTwentyMetres).isPresent())
                .isEqualTo(suggested);
    }

    /** It can be sent in the place of what was typed: not a decimal too many, and within the range. */
    @Property
    boolean whateverIsSuggestedIsBelievedWhenItIsSent(
            @ForAll LengthUnit unit,
            @ForAll @LongRange(min = 0, max = 9_999_999) long digits,
            @ForAll @IntRange(min = 0, max = 5) int decimals) {
        return Slip.suggest(BigDecimal.valueOf(digits, decimals), unit, PLAUSIBLE)
                .map(slip -> PLAUSIBLE.hold(Length.parse(slip.value(), unit)))
                .orElse(true);
    }
}
