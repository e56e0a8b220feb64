package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.fit.Shapes.nm;
import static org.borewright.fit.Shapes.worth;

import org.borewright.measure.Uncertainty;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarriedTest {

    @ParameterizedTest
    @CsvSource({
        "ONCE, 5000, 5000",
        "TWICE, 5000, 10000",
        "TWICE, 5001, 10002",
        "PI_TIMES, 5000, 15708",
        "PI_TIMES, 1, 4",
        "PI_TIMES, 0, 0",
        "DIFFERENCE, 5000, 0"
    })
    void theUncertaintyOfTheValueGoesUp(Carried carried, long reading, long value) {
        assertThat(carried.from(worth(nm(reading)))).isEqualTo(nm(value));
    }

    /** 2·√2·√(300² + 400²) = 1414.2: nothing else is left in a difference. */
    @Test
    void aDifferenceKeepsStepAndScatterTwice() {
        Uncertainty reading = new Uncertainty(2500, 300, 400, 700, 20, 60, 700);
        assertThat(Carried.DIFFERENCE.from(reading)).isEqualTo(nm(1415));
    }
}
