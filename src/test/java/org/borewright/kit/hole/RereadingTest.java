package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.borewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RereadingTest {

    /** To the nanometre, from below and from above; and where nothing lies between the two ends, the end that passes. */
    @ParameterizedTest(name = "from {0} to {1}, passing from {2} to {3}: {4}")
    @CsvSource({
        "70.000, 70.100, 69, 70.074719, 70.074719",
        "70.100, 70.000, 70.074719, 71, 70.074719",
        "70.000, 70.000001, 69, 70.000000, 70.000",
        "70.000, 70.000000, 69, 70.000000, 70.000",
        "70.000, 70.000002, 69, 70.000001, 70.000001",
        "70.000, 70.000100, 69, 71, 70.000099",
    })
    void theLastReadingThatPassesIsFound(Length passing, Length failing, Length from, Length to, Length last) {
        List<Length> asked = new ArrayList<>();

        assertThat(Rereading.lastPassing(passing, failing, reading -> {
                    asked.add(reading);
                    return !reading.isLessThan(from) && !reading.isMoreThan(to);
                }))
                .isEqualTo(last);
        assertThat(asked).doesNotContain(passing, failing);
    }
}
