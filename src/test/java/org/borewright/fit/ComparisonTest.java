package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonTest {

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            SENSE,    VALUE,  LIMIT,  U, MARGIN, OUTCOME
            AT_LEAST, 30,     30,     0, 0,      IN
            AT_LEAST, 29,     30,     0, -1,     OUT
            AT_MOST,  30,     30,     0, 0,      IN
            AT_MOST,  31,     30,     0, -1,     OUT
            EXACTLY,  30,     30,     0, 0,      IN
            EXACTLY,  31,     30,     0, -1,     OUT
            EXACTLY,  29,     30,     0, -1,     OUT
            AT_LEAST, 35,     30,     5, 5,      IN
            AT_LEAST, 34,     30,     5, 4,      TOO_CLOSE
            AT_LEAST, 26,     30,     5, -4,     TOO_CLOSE
            AT_LEAST, 25,     30,     5, -5,     OUT
            AT_MOST,  25,     30,     5, 5,      IN
            AT_MOST,  34,     30,     5, -4,     TOO_CLOSE
            AT_MOST,  35,     30,     5, -5,     OUT
            """)
    void exactFiguresMeetTheLimitAndMeasuredOnesKeepOff(
            Sense sense, long value, long limit, long uncertainty, long margin, Outcome outcome) {
        Comparison comparison = compare(sense, value, limit).within(nm(uncertainty));
        assertThat(comparison.margin()).isEqualTo(margin);
        assertThat(comparison.outcome()).isEqualTo(outcome);
    }

    /** A gauge settles a call if what the value carries of its uncertainty is no more than the margin. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            CARRIED,  MARGIN, U,    VALUE'S U, GAUGE
            ONCE,     4999,   5000, 5000,      4999
            ONCE,     -4999,  5000, 5000,      4999
            ONCE,     5000,   5000, 5000,
            ONCE,     0,      5000, 5000,
            TWICE,    5001,   5000, 10000,     2500
            TWICE,    1,      5000, 10000,
            TWICE,    10000,  5000, 10000,
            PI_TIMES, 5000,   5000, 15708,     1591
            PI_TIMES, -5000,  5000, 15708,     1591
            PI_TIMES, 3,      5000, 15708,
            PI_TIMES, 4,      5000, 15708,     1
            PI_TIMES, 15708,  5000, 15708,
            """)
    void aCloseCallNamesTheReadingThatWouldSettleIt(
            Carried carried, long margin, long uncertainty, long ofValue, Long gauge) {
        Comparison comparison = compare(Sense.AT_LEAST, margin, 0).within(nm(uncertainty), carried);
        assertThat(comparison.uncertainty()).isEqualTo(ofValue);
        assertThat(comparison.settledWithin())
                .isEqualTo(Optional.ofNullable(gauge).map(Length::ofNanometres));
    }

    @Property
    boolean theReadingNamedSettlesItAndAWorseOneDoesNot(
            @ForAll Carried carried,
            @ForAll @LongRange(min = -50_000, max = 50_000) long margin,
            @ForAll @LongRange(min = 1, max = 20_000) long uncertainty) {
        Comparison call = compare(Sense.AT_MOST, 0, margin);
        return call.within(nm(uncertainty), carried)
                .settledWithin()
                .map(settled -> call.within(settled, carried).outcome() != Outcome.TOO_CLOSE
                        && call.within(settled.plus(nm(1)), carried).outcome() == Outcome.TOO_CLOSE)
                .orElse(true);
    }

    @ParameterizedTest
    @CsvSource({"0, ONCE, 0.5", "5000, ONCE, 0.977250", "-5000, ONCE, 0.022750", "5000, TWICE, 0.841345"})
    void aMeasuredValueCarriesItsProbability(long margin, Carried carried, double probability) {
        Comparison comparison = compare(Sense.AT_LEAST, margin, 0).within(mm("0.005"), carried);
        assertThat(comparison.conformance().orElseThrow()).isCloseTo(probability, within(5e-7));
    }

    /** 3, 4, 5: beside a piston worth 4 a hole worth 3 settles what lies 5 off its limit. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            MARGIN, HOLE, PISTON, TOGETHER, OUTCOME,   HOLE AGAIN, BOTH AGAIN
            13000,  12000, 5000,  13000,    IN,        ,
            -13000, 12000, 5000,  13000,    OUT,       ,
            12999,  12000, 5000,  13000,    TOO_CLOSE, 11998,      12999
            5000,   12000, 4000,  12650,    TOO_CLOSE, 3000,       5000
            -5000,  12000, 4000,  12650,    TOO_CLOSE, 3000,       5000
            4000,   12000, 4000,  12650,    TOO_CLOSE, ,           4000
            3999,   12000, 4000,  12650,    TOO_CLOSE, ,           3999
            0,      12000, 4000,  12650,    TOO_CLOSE, ,
            """)
    void aDifferenceOfTwoLengthsIsSettledByTheOneThatIsMeasuredAgain(
            long margin, long hole, long piston, long together, Outcome outcome, Long holeAgain, Long bothAgain) {
        Comparison comparison = compare(Sense.AT_LEAST, margin, 0).within(nm(hole), nm(piston));
        assertThat(comparison.uncertainty()).isEqualTo(together);
        assertThat(comparison.outcome()).isEqualTo(outcome);
        assertThat(comparison.settledWithin())
                .isEqualTo(Optional.ofNullable(holeAgain).map(Length::ofNanometres));
        assertThat(comparison.settledTogether())
                .isEqualTo(Optional.ofNullable(bothAgain).map(Length::ofNanometres));
    }

    @ParameterizedTest
    @CsvSource({"1, IN", "0, IN", "-1, OUT"})
    void partAgainstPartHasNoProbabilityAndNothingToSettle(long margin, Outcome outcome) {
        Comparison comparison = compare(Sense.AT_LEAST, margin, 0);
        assertThat(comparison.outcome()).isEqualTo(outcome);
        assertThat(comparison.conformance()).isEmpty();
        assertThat(comparison.settledWithin()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LENGTH, RATIO, 0", "MASS, PER_CENT, 0", "LENGTH, LENGTH, -1"})
    void unlikeQuantitiesAndNegativeUncertaintiesAreRefused(Quantity value, Quantity limit, long uncertainty) {
        Amount found = new Amount(1, value);
        Amount asked = new Amount(1, limit);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Comparison(
                        Rule.BRIDGE, "1 and 2", found, Sense.AT_LEAST, asked, uncertainty, Carried.ONCE, Length.ZERO))
                .withMessageContaining("BRIDGE")
                .withMessageContaining(value.name());
    }

    private static Comparison compare(Sense sense, long value, long limit) {
        return Comparison.exact(Rule.BRIDGE, "1 and 2", Amount.of(nm(value)), sense, Amount.of(nm(limit)));
    }
}
