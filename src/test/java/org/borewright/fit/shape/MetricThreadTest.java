package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class MetricThreadTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/fit/iso-898-1-threads.csv", useHeadersInDisplayName = true)
    void theStressAreaIsThatOfTheStandard(Length diameter, Length pitch, double printed, double exact) {
        MetricThread thread = new MetricThread(diameter, pitch);
        assertThat(thread.stressArea()).isCloseTo(printed, withinPercentage(0.5));
        assertThat(thread.stressArea()).isCloseTo(exact, within(0.001));
    }

    /** As = π/4·((d2 + d3)/2)², d2 = d − 0.649 519·P, d3 = d − 1.226 869·P: ISO 724, the other way to the same area. */
    @Property
    boolean theAreaIsThatOfTheMeanOfPitchAndMinorDiameter(
            @ForAll @IntRange(min = 3_000, max = 30_000) int diameter,
            @ForAll @IntRange(min = 200, max = 2_900) int pitch) {
        double d = diameter / 1000.0;
        double p = pitch / 1000.0;
        double mean = (d - 0.649519 * p + d - 1.226869 * p) / 2;
        double area = new MetricThread(Length.ofMicrometres(diameter), Length.ofMicrometres(pitch)).stressArea();
        return Math.abs(area - Math.PI / 4 * mean * mean) <= 5e-4 * d;
    }

    @ParameterizedTest
    @CsvSource({"8, 1.25, M8 × 1.25", "10, 1, M10 × 1", "12.000, 1.500, M12 × 1.5", "20, 2.5, M20 × 2.5"})
    void isNamedAsOnTheDrawing(Length diameter, Length pitch, String label) {
        assertThat(new MetricThread(diameter, pitch).label()).isEqualTo(label);
    }

    @ParameterizedTest
    @CsvSource({"8, 0", "8, -1.25", "8, 8", "1, 1.25"})
    void aPitchThatLeavesNoCoreIsRefused(Length diameter, Length pitch) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MetricThread(diameter, pitch))
                .withMessage("thread of " + diameter + " with a pitch of " + pitch);
    }
}
