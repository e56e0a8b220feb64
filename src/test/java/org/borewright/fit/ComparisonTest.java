package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.borewright.fit.Shapes.mm;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.worth;

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

    @ParameterizedTest
    @CsvSource({"0, ONCE, 0.5", "5000, ONCE, 0.977250", "-5000, ONCE, 0.022750", "5000, TWICE, 0.841345"})
    void aMeasuredValueCarriesItsProbability(long margin, Carried carried, double probability) {
        Comparison comparison = compare(Sense.AT_LEAST, margin, 0).within(worth(mm("0.005")), carried);
        assertThat(comparison.conformance().orElseThrow()).isCloseTo(probability, within(5e-7));
    }

    /** 5, 12, 13. */
    @ParameterizedTest
    @CsvSource({"13000, IN", "12999, TOO_CLOSE", "-12999, TOO_CLOSE", "-13000, OUT"})
    void aDifferenceOfTwoLengthsMeasuredApartCarriesBoth(long margin, Outcome outcome) {
        Comparison comparison = compare(Sense.AT_LEAST, margin, 0).within(worth(nm(12_000)), worth(nm(5_000)));
        assertThat(comparison.uncertainty()).isEqualTo(13_000);
        assertThat(comparison.outcome()).isEqualTo(outcome);
    }

    @ParameterizedTest
    @CsvSource({"1, IN", "0, IN", "-1, OUT"})
    void partAgainstPartHasNoProbabilityAndNothingToSettle(long margin, Outcome outcome) {
        Comparison comparison = compare(Sense.AT_LEAST, margin, 0);
        assertThat(comparison.outcome()).isEqualTo(outcome);
        assertThat(comparison.conformance()).isEmpty();
        assertThat(comparison.closer()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LENGTH, RATIO, 0", "MASS, PER_CENT, 0", "LENGTH, LENGTH, -1"})
    void unlikeQuantitiesAndNegativeUncertaintiesAreRefused(Quantity value, Quantity limit, long uncertainty) {
        Amount found = new Amount(1, value);
        Amount asked = new Amount(1, limit);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Comparison(
                        Rule.BRIDGE, "1 and 2", found, Sense.AT_LEAST, asked, uncertainty, Readings.NONE))
                .withMessageContaining("BRIDGE")
                .withMessageContaining(value.name());
    }

    private static Comparison compare(Sense sense, long value, long limit) {
        return Comparison.exact(Rule.BRIDGE, "1 and 2", Amount.of(nm(value)), sense, Amount.of(nm(limit)));
    }
}
