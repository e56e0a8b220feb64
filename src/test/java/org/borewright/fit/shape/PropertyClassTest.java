package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PropertyClassTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/fit/iso-898-1-threads.csv", useHeadersInDisplayName = true)
    void theProofLoadsAreThoseOfTheStandard(
            Length diameter,
            Length pitch,
            double printedArea,
            double exactArea,
            double in88,
            double in109,
            double in129,
            double perCentIn88) {
        MetricThread thread = new MetricThread(diameter, pitch);
        assertThat(PropertyClass.CLASS_8_8.proofLoad(thread)).isCloseTo(in88, withinPercentage(perCentIn88));
        assertThat(PropertyClass.CLASS_10_9.proofLoad(thread)).isCloseTo(in109, withinPercentage(0.5));
        assertThat(PropertyClass.CLASS_12_9.proofLoad(thread)).isCloseTo(in129, withinPercentage(0.5));
    }

    /** Stress under proof load, ISO 898-1:2013: 8.8 to M16 580 MPa and above 600 MPa, 10.9 830 MPa, 12.9 970 MPa. */
    @ParameterizedTest
    @CsvSource({"CLASS_8_8, 8.8, 580, 600", "CLASS_10_9, 10.9, 830, 830", "CLASS_12_9, 12.9, 970, 970"})
    void theProofStressChangesAboveM16(PropertyClass strength, String label, double toM16, double above) {
        assertThat(strength.label()).isEqualTo(label);
        assertThat(stress(strength, "8")).isCloseTo(toM16, within(1e-9));
        assertThat(stress(strength, "16")).isCloseTo(toM16, within(1e-9));
        assertThat(stress(strength, "16.000001")).isCloseTo(above, within(1e-9));
        assertThat(stress(strength, "20")).isCloseTo(above, within(1e-9));
    }

    private static double stress(PropertyClass strength, String diameter) {
        MetricThread thread = new MetricThread(Length.parseMillimetres(diameter), Length.ofMicrometres(1_250));
        return strength.proofLoad(thread) / thread.stressArea();
    }
}
