package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class LengthTest {

    private static final long TEN_METRES = 10_000_000_000L;
    private static final long TEN_METRES_IN_INCH_STEPS = TEN_METRES / 254;

    /** Exact by the definition of the inch, 25.4 mm: NIST SP 811, B.8; the millimetre by ISO 80000-3. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            80.010,     MILLIMETRE,   80010000
            3.15,       INCH,         80010000
            3.150000000,INCH,         80010000
            1,          INCH,         25400000
            0.020,      INCH,           508000
            0.030,      INCH,           762000
            0.040,      INCH,          1016000
            0.060,      INCH,          1524000
            0.001,      MILLIMETRE,       1000
            0.0001,     INCH,             2540
            0.00001,    INCH,              254
            0.000001,   MILLIMETRE,          1
            -0.000001,  MILLIMETRE,         -1
            0,          INCH,                0
            0E+40,      MILLIMETRE,          0
            0.0000010,  MILLIMETRE,          1
            8E+1,       MILLIMETRE,   80000000
            10000,      MILLIMETRE, 10000000000
            -10000,     MILLIMETRE, -10000000000
            393.70078,  INCH,        9999999812
            """)
    void whatIsTypedIsTakenExactly(BigDecimal typed, LengthUnit unit, long nanometres) {
        assertThat(Length.parse(typed, unit)).isEqualTo(Length.ofNanometres(nanometres));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            80.0100001,     MILLIMETRE, more than the 6 decimals that mm can be typed with
            3.150001,       INCH,       more than the 5 decimals that in can be typed with
            1E-999999999,   MILLIMETRE, more than the 6 decimals
            100000.0000001, MILLIMETRE, more than the 6 decimals
            10000.000001,   MILLIMETRE, longer than 10 m
            -10000.000001,  MILLIMETRE, longer than 10 m
            393.70079,      INCH,       longer than 10 m
            1000000,        MILLIMETRE, longer than 10 m
            1E+999999999,   INCH,       longer than 10 m
            1E+2147483647,  INCH,       longer than 10 m
            """)
    void whatCannotBeMeantIsRefusedWithTheValueAndTheReason(BigDecimal typed, LengthUnit unit, String reason) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.parse(typed, unit))
                .withMessageContaining(reason)
                .withMessageStartingWith(typed.toString())
                .satisfies(refusal -> assertThat(refusal.getMessage().length()).isLessThan(100));
    }

    /** The manuals print both units; each is the other within one and a half of the last printed digit. */
    @ParameterizedTest
    @CsvFileSource(resources = "/measure/manual-lengths.csv", useHeadersInDisplayName = true)
    void theInchesOfTheManualsAreTheirMillimetres(BigDecimal inches, BigDecimal millimetres, String verdict) {
        BigDecimal turned = Length.parse(inches, LengthUnit.INCH).to(LengthUnit.MILLIMETRE, RoundingMode.UNNECESSARY);
        BigDecimal lastDigits = millimetres.ulp().multiply(new BigDecimal("1.5"));
        boolean same = turned.subtract(millimetres).abs().compareTo(lastDigits) <= 0;
        assertThat(same ? "same" : "misprint").isEqualTo(verdict);
    }

    @Property
    boolean anotherLibraryOfUnitsTurnsInchesIntoTheSameNanometres(
            @ForAll @LongRange(min = -TEN_METRES_IN_INCH_STEPS, max = TEN_METRES_IN_INCH_STEPS) long steps) {
        BigDecimal inches = BigDecimal.valueOf(steps, 5);
        double theirs = Quantities.getQuantity(inches, USCustomary.INCH)
                .to(MetricPrefix.NANO(Units.METRE))
                .getValue()
                .doubleValue();
        return Math.abs(theirs - Length.parse(inches, LengthUnit.INCH).nanometres()) < 0.001;
    }

    @Property
    boolean inchesAndMillimetresAreTheSameLength(
            @ForAll @LongRange(min = -TEN_METRES_IN_INCH_STEPS, max = TEN_METRES_IN_INCH_STEPS) long steps) {
        BigDecimal inches = BigDecimal.valueOf(steps, 5);
        BigDecimal millimetres = inches.multiply(new BigDecimal("25.4"));
        return Length.parse(inches, LengthUnit.INCH).equals(Length.parse(millimetres, LengthUnit.MILLIMETRE));
    }

    @Property
    boolean whatIsShownCanBeTypedAgain(@ForAll @LongRange(min = -TEN_METRES, max = TEN_METRES) long nanometres) {
        Length length = Length.ofNanometres(nanometres);
        String shown = length.toString();
        return shown.endsWith(" mm")
                && Length.parseMillimetres(shown.replace(" mm", "")).equals(length)
                && Length.parse(length.to(LengthUnit.MILLIMETRE, RoundingMode.UNNECESSARY), LengthUnit.MILLIMETRE)
                        .equals(length);
    }

    @Property
    boolean inchesShownAreTheInchesTyped(
            @ForAll @LongRange(min = -TEN_METRES_IN_INCH_STEPS, max = TEN_METRES_IN_INCH_STEPS) long steps) {
        BigDecimal typed = BigDecimal.valueOf(steps, 5);
        return Length.parse(typed, LengthUnit.INCH)
                        .to(LengthUnit.INCH, RoundingMode.UNNECESSARY)
                        .compareTo(typed)
                == 0;
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            70.26,     70.260 mm
            70,        70.000 mm
            70.2605,   70.2605 mm
            0.000001,  0.000001 mm
            -0.02,     -0.020 mm
            0,         0.000 mm
            """)
    void isWrittenWithThreeDecimalsOrAsManyAsItNeeds(String typed, String written) {
        assertThat(Length.parseMillimetres(typed)).hasToString(written);
    }

    /** 0.25, 0.50, 1.00 mm = 0.009 842 520, 0.019 685 039, 0.039 370 079 in. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0.25,      INCH,       FLOOR,   0.009842
            0.25,      INCH,       CEILING, 0.009843
            0.50,      INCH,       FLOOR,   0.019685
            0.50,      INCH,       CEILING, 0.019686
            1.00,      INCH,       FLOOR,   0.039370
            1.00,      INCH,       CEILING, 0.039371
            -0.25,     INCH,       FLOOR,   -0.009843
            -0.25,     INCH,       CEILING, -0.009842
            80.01,     INCH,       FLOOR,   3.150000
            80.01,     INCH,       CEILING, 3.150000
            70.260001, MILLIMETRE, FLOOR,   70.260001
            """)
    void isShownRoundedTheWayThatDoesNotFlatter(Length length, LengthUnit unit, RoundingMode rounding, String shown) {
        assertThat(length.to(unit, rounding)).isEqualTo(new BigDecimal(shown));
    }

    @Property
    boolean takingAwayUndoesAdding(
            @ForAll @LongRange(min = -TEN_METRES, max = TEN_METRES) long first,
            @ForAll @LongRange(min = -TEN_METRES, max = TEN_METRES) long second) {
        Length a = Length.ofNanometres(first);
        Length b = Length.ofNanometres(second);
        return a.plus(b).minus(b).equals(a)
                && a.plus(b).equals(b.plus(a))
                && a.minus(b).plus(b.minus(a)).equals(Length.ZERO)
                && a.plus(b).nanometres() == first + second;
    }

    @Property
    boolean timesIsAddingThatOften(
            @ForAll @LongRange(min = -TEN_METRES, max = TEN_METRES) long nanometres,
            @ForAll @IntRange(min = 1, max = 16) int count) {
        Length length = Length.ofNanometres(nanometres);
        Length sum = Stream.generate(() -> length).limit(count).reduce(Length.ZERO, Length::plus);
        return length.times(count).equals(sum) && length.doubled().equals(length.plus(length));
    }

    @Property
    boolean theTwoHalvesAreTheWholeAndOneNanometreApartAtMost(@ForAll long nanometres) {
        Length whole = Length.ofNanometres(nanometres);
        long down = whole.halfRoundedDown().nanometres();
        long up = whole.halfRoundedUp().nanometres();
        return down + up == nanometres && up - down == (nanometres & 1);
    }

    @ParameterizedTest
    @CsvSource({"5, 2, 3", "4, 2, 2", "1, 0, 1", "0, 0, 0", "-1, -1, 0", "-5, -3, -2", "-4, -2, -2"})
    void anOddNanometreGoesTheWayItIsAsked(long whole, long down, long up) {
        assertThat(Length.ofNanometres(whole).halfRoundedDown()).isEqualTo(Length.ofNanometres(down));
        assertThat(Length.ofNanometres(whole).halfRoundedUp()).isEqualTo(Length.ofNanometres(up));
    }

    @ParameterizedTest
    @CsvSource({"70.000, 70.000001, true", "70.000, 70.000, false", "70.000001, 70.000, false", "-1, 1, true"})
    void isLessToTheNanometre(Length first, Length second, boolean less) {
        assertThat(first.isLessThan(second)).isEqualTo(less);
        assertThat(second.isMoreThan(first)).isEqualTo(less);
        assertThat(first.compareTo(second) < 0).isEqualTo(less);
    }

    @Property
    boolean theLargerAndTheSmallerAreTheTwo(@ForAll long first, @ForAll long second) {
        Length a = Length.ofNanometres(first);
        Length b = Length.ofNanometres(second);
        return a.max(b).nanometres() == Math.max(first, second)
                && a.min(b).nanometres() == Math.min(first, second)
                && a.max(b).equals(b.max(a))
                && Integer.signum(a.compareTo(b)) == Long.compare(first, second);
    }

    @ParameterizedTest
    @CsvSource({"-0.000001, 0.000001, true", "0.000001, 0.000001, false", "0, 0, false", "-70, 70, true"})
    void theLengthWithoutItsSign(Length length, Length absolute, boolean negative) {
        assertThat(length.absolute()).isEqualTo(absolute);
        assertThat(length.isNegative()).isEqualTo(negative);
    }

    @ParameterizedTest
    @CsvSource({"5, 5000", "0, 0", "-1016, -1016000", "1, 1000"})
    void micrometresOfTheTradeAreThousandNanometres(long micrometres, long nanometres) {
        assertThat(Length.ofMicrometres(micrometres).nanometres()).isEqualTo(nanometres);
    }

    @ParameterizedTest
    @CsvSource({"70.260, 70.26", "0.000001, 1e-6", "-0.02, -0.02"})
    void inMillimetresForVolumes(Length length, double millimetres) {
        assertThat(length.toMillimetres()).isEqualTo(millimetres);
    }

    static Stream<Function<Length, Length>> whatLeavesTheRange() {
        return Stream.of(
                longest -> longest.plus(Length.ofNanometres(1)),
                longest -> longest.minus(Length.ofNanometres(-1)),
                longest -> longest.times(2),
                Length::doubled,
                longest -> Length.ofNanometres(Long.MIN_VALUE).absolute(),
                longest -> Length.ofMicrometres(longest.nanometres() / 999));
    }

    @ParameterizedTest
    @MethodSource("whatLeavesTheRange")
    void arithmeticBeyondTheRangeIsAFault(Function<Length, Length> arithmetic) {
        Length longest = Length.ofNanometres(Long.MAX_VALUE);
        assertThatThrownBy(() -> arithmetic.apply(longest)).isInstanceOf(ArithmeticException.class);
    }
}
