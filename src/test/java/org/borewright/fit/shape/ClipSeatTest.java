package org.borewright.fit.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClipSeatTest {

    @ParameterizedTest
    @CsvSource({"0, 0.5", "0.1, 0.5", "0, 0"})
    void aFloatFromZeroUpIsTaken(Length least, Length greatest) {
        assertThat(seat(least, greatest).endFloat()).isEqualTo(new Limits(least, greatest));
    }

    /** A pin without float breaks a clip. */
    @ParameterizedTest
    @CsvSource({"-0.000001, 0.5", "-0.1, -0.05"})
    void noPistonAllowsAPinToPressOnItsClips(Length least, Length greatest) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> seat(least, greatest))
                .withMessage("least end float " + least + " is negative");
    }

    private static ClipSeat seat(Length least, Length greatest) {
        Limits span = Limits.exactly(Length.ofMicrometres(50_000));
        Limits width = Limits.exactly(Length.ofMicrometres(1_100));
        return new ClipSeat(span, width, new Limits(least, greatest), Length.ofMicrometres(100));
    }
}
