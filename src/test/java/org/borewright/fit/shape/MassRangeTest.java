package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MassRangeTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "250000, 250000", "250000, 252000"})
    void theLeastIsNotMoreThanTheGreatest(long least, long greatest) {
        MassRange mass = new MassRange(least, greatest);
        assertThat(mass.leastMilligrams()).isEqualTo(least);
        assertThat(mass.greatestMilligrams()).isEqualTo(greatest);
    }

    @ParameterizedTest
    @CsvSource({"-1, 252000", "252001, 252000"})
    void aRangeUpsideDownOrBelowZeroIsRefused(long least, long greatest) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MassRange(least, greatest))
                .withMessageContaining("mass least " + least + " mg, greatest " + greatest + " mg");
    }
}
