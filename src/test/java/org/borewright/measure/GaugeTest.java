package org.borewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeTest {

    private static final Map<String, Gauge> USUAL =
            Map.of("bore gauge", Gauge.USUAL_BORE_GAUGE, "micrometer", Gauge.USUAL_MICROMETER);

    /** Common practice: a mastered dial bore gauge, an outside micrometer. */
    @ParameterizedTest
    @CsvSource({"bore gauge, 0.005, 0.001", "micrometer, 0.003, 0.001"})
    void whereNoneIsNamedTheUsualOneIsTaken(String gauge, Length uncertainty, Length resolution) {
        assertThat(USUAL).containsEntry(gauge, new Gauge(uncertainty, resolution));
    }

    @ParameterizedTest
    @CsvSource({"-0.000001, 0.001", "0.005, -0.000001"})
    void aGaugeBetterThanExactIsRefused(Length uncertainty, Length resolution) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Gauge(uncertainty, resolution))
                .withMessageContaining(uncertainty.toString())
                .withMessageContaining(resolution.toString());
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.000001, 0", "0, 0.000001"})
    void anExactGaugeIsTaken(Length uncertainty, Length resolution) {
        Gauge gauge = new Gauge(uncertainty, resolution);
        assertThat(gauge.expandedUncertainty()).isEqualTo(uncertainty);
        assertThat(gauge.resolution()).isEqualTo(resolution);
    }
}
