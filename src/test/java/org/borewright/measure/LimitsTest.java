package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
            69.999999, false
            70.000000, true
            70.000001, true
            70.018999, true
            70.019000, true
            70.019001, false
            """)
    void bothLimitsBelongToThem(Length length, boolean held) {
        assertThat(limits("70.000", "70.019").hold(length)).isEqualTo(held);
    }

    /**
     * A size moves both limits. Bores of oversize sleeves: TM 55-1905-219-14-10, 5-20; all follow from the first by the difference
     * of the oversizes.
     */
    @ParameterizedTest
    @CsvSource({"0.005, 4.631, 4.632", "0.010, 4.636, 4.637", "0.020, 4.646, 4.647", "0.030, 4.656, 4.657"})
    void anOversizeMovesBothLimits(BigDecimal oversize, BigDecimal least, BigDecimal greatest) {
        Limits standard = new Limits(inches("4.626"), inches("4.627"));
        Limits moved = standard.plus(Length.parse(oversize, LengthUnit.INCH));
        assertThat(moved)
                .isEqualTo(new Limits(Length.parse(least, LengthUnit.INCH), Length.parse(greatest, LengthUnit.INCH)));
        assertThat(moved.width()).isEqualTo(inches("0.001"));
    }

    @Property
    boolean whatIsLeftHoldsEveryPairing(
            @ForAll @LongRange(min = 0, max = 100_000_000) long hole,
            @ForAll @LongRange(min = 0, max = 100_000_000) long part,
            @ForAll @LongRange(min = 0, max = 50_000) long holeTolerance,
            @ForAll @LongRange(min = 0, max = 50_000) long partTolerance) {
        Limits left = nanometres(hole, holeTolerance).minus(nanometres(part, partTolerance));
        return left.least().nanometres() == hole - part - partTolerance
                && left.greatest().nanometres() == hole + holeTolerance - part
                && left.hold(Length.ofNanometres(hole - part));
    }

    @ParameterizedTest
    @CsvSource({
        "70.010, 70.020, 70.030, 70.010, 70.030",
        "70.030, 70.020, 70.010, 70.010, 70.030",
        "70.020, 70.030, 70.010, 70.010, 70.030",
        "70.020, 70.020, 70.020, 70.020, 70.020",
        "-0.001, 0, 0.000001, -0.001, 0.000001"
    })
    void aroundSomeLengthsStandTheSmallestAndTheLargest(
            Length first, Length second, Length third, Length least, Length greatest) {
        assertThat(Limits.around(List.of(first, second, third))).isEqualTo(new Limits(least, greatest));
    }

    @Test
    void oneExactLengthIsBothLimits() {
        assertThat(Limits.exactly(mm("70.000"))).isEqualTo(limits("70.000", "70.000"));
        assertThat(Limits.exactly(mm("70.000")).width()).isEqualTo(Length.ZERO);
    }

    @ParameterizedTest
    @CsvSource({"70.000001, 70.000000", "0.000001, -0.000001"})
    void aLeastAboveTheGreatestIsRefused(String least, String greatest) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> limits(least, greatest))
                .withMessageContaining("least " + mm(least) + " is more than greatest " + mm(greatest));
    }

    private static Limits nanometres(long least, long tolerance) {
        return new Limits(Length.ofNanometres(least), Length.ofNanometres(least + tolerance));
    }

    private static Limits limits(String least, String greatest) {
        return new Limits(mm(least), mm(greatest));
    }

    private static Length mm(String millimetres) {
        return Length.parseMillimetres(millimetres);
    }

    private static Length inches(String inches) {
        return Length.parse(new BigDecimal(inches), LengthUnit.INCH);
    }
}
