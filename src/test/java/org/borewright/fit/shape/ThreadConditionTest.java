package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ThreadConditionTest {

    /** K = T/(d·F) from the pairs of VDI 2230: 0.16 at µ 0.12, 0.14 at µ 0.10, to two decimals; paste: common practice. */
    @ParameterizedTest
    @CsvSource({"DRY, dry, 0.16", "OILED, oiled, 0.14", "PASTE, paste, 0.11"})
    void theSlipperierTheThreadTheLowerTheFactor(ThreadCondition condition, String label, double lowestFactor) {
        assertThat(condition.label()).isEqualTo(label);
        assertThat(condition.lowestFactor()).isEqualTo(lowestFactor);
    }
}
