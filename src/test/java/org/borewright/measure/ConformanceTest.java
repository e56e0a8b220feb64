package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConformanceTest {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    @ParameterizedTest
    @CsvFileSource(resources = "/measure/conformance.csv", useHeadersInDisplayName = true)
    void aMarginMakesAProbability(long margin, long expandedUncertainty, double probability, double rounding) {
        assertThat(Conformance.probability(margin, expandedUncertainty)).isCloseTo(probability, within(rounding));
    }

    /** JCGM 106:2012, 7.4: y 13.6, u 1.8, within 12.5 to 16.3; 0.66, to more digits 0.662 630. In thousandths. */
    @ParameterizedTest
    @CsvSource({"13600, 1800, 12500, 16300, 0.662630"})
    void twoLimitsLeaveWhatNeitherTakes(long value, long u, long least, long greatest, double probability) {
        double above = Conformance.probability(value - least, 2 * u);
        double below = Conformance.probability(greatest - value, 2 * u);
        assertThat(above + below - 1).isCloseTo(probability, within(5e-7));
    }

    /**
     * JCGM 106:2012, 9.5: a process N(1500, 0.12), measured with u 0.04, tolerance 1499.8 to 1500.2, accepted from 1499.82 to 1500.18.
     * Printed 0.904 conforming, risks 0.01 and 0.07; to more digits 0.904 419, 0.009 878 and
     * 0.069 027. In millionths, the process in slices of a ten-thousandth.
     */
    @Test
    void theRisksOfTheProcessExampleComeOut() {
        double conforming = 0;
        double consumer = 0;
        double producer = 0;
        for (long value = 1_499_000_050; value < 1_501_000_000; value += 100) {
            double share = Conformance.probability(value + 50 - 1_500_000_000, 240_000)
                    - Conformance.probability(value - 50 - 1_500_000_000, 240_000);
            double accepted = Conformance.probability(value - 1_499_820_000, 80_000)
                    + Conformance.probability(1_500_180_000 - value, 80_000)
                    - 1;
            boolean conforms = value > 1_499_800_000 && value < 1_500_200_000;
            conforming += conforms ? share : 0;
            consumer += conforms ? 0 : share * accepted;
            producer += conforms ? share * (1 - accepted) : 0;
        }
        assertThat(conforming).isCloseTo(0.904419, within(5e-7));
        assertThat(consumer).isCloseTo(0.009878, within(5e-7));
        assertThat(producer).isCloseTo(0.069027, within(5e-7));
    }

    @Property
    boolean anotherLibraryOfDistributionsAgrees(@ForAll @DoubleRange(min = -9, max = 9) double z) {
        return Math.abs(Conformance.standardNormal(z) - STANDARD.cumulativeProbability(z)) < 2e-15;
    }

    @Property
    boolean isAProbabilityAndTheRestIsTheOtherSide(
            @ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long margin,
            @ForAll @LongRange(min = 1, max = 1_000_000) long expandedUncertainty) {
        double inside = Conformance.probability(margin, expandedUncertainty);
        double outside = Conformance.probability(-margin, expandedUncertainty);
        return inside >= 0 && inside <= 1 && Math.abs(inside + outside - 1) < 1e-15;
    }

    @Property
    boolean moreMarginIsNeverLessProbable(
            @ForAll @LongRange(min = -40_000, max = 40_000) long margin,
            @ForAll @LongRange(min = 1, max = 10_000) long more,
            @ForAll @LongRange(min = 1, max = 10_000) long expandedUncertainty) {
        double less = Conformance.probability(margin, expandedUncertainty);
        return Conformance.probability(margin + more, expandedUncertainty) >= less - 1e-15;
    }

    @ParameterizedTest
    @ValueSource(longs = {0, -1, Long.MIN_VALUE})
    void aValueWithoutUncertaintyHasNoProbability(long expandedUncertainty) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformance.probability(0, expandedUncertainty))
                .withMessageContaining(Long.toString(expandedUncertainty));
    }
}
