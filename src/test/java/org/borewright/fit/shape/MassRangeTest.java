package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
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

    @ParameterizedTest
    @CsvSource({"250000, 252000, 250000, 252000", "249999, 251000, 249999, 252000", "251000, 252001, 250000, 252001"})
    void theRangeAroundPartsIsFromTheLightestToTheHeaviest(long from, long to, long least, long greatest) {
        MassRange other = new MassRange(250_000, 252_000);
        assertThat(MassRange.around(List.of(new MassRange(from, to), other)))
                .isEqualTo(MassRange.around(List.of(other, new MassRange(from, to))))
                .isEqualTo(new MassRange(least, greatest));
    }
}
