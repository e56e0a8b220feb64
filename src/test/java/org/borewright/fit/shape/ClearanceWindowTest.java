package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClearanceWindowTest {

    @ParameterizedTest
    @CsvSource({"0.030, 0.040, 0.060", "0, 0, 0", "0.030, 0.030, 0.060", "0.030, 0.060, 0.060"})
    void leastTargetAndGreatestRise(Length least, Length target, Length greatest) {
        assertThat(new ClearanceWindow(least, target, greatest).limits()).isEqualTo(new Limits(least, greatest));
    }

    @ParameterizedTest
    @CsvSource({"-0.000001, 0.040, 0.060", "0.040001, 0.040, 0.060", "0.030, 0.060001, 0.060"})
    void aWindowThatDoesNotRiseIsRefused(Length least, Length target, Length greatest) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ClearanceWindow(least, target, greatest))
                .withMessageContaining(least.toString())
                .withMessageContaining(target.toString())
                .withMessageContaining(greatest.toString());
    }
}
