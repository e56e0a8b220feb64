package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AxisTest {

    /** Thrust is at right angles to the pin. */
    @ParameterizedTest
    @CsvSource({"0, thrust", "90, pin", "45, 45°", "1, 1°", "179, 179°"})
    void isNamedByItsAngleFromThrust(int degrees, String label) {
        assertThat(new Axis(degrees).label()).isEqualTo(label);
    }

    @ParameterizedTest
    @CsvSource({"THRUST, 0", "PIN, 90"})
    void thrustAndPinAreAtRightAngles(String axis, int degrees) {
        assertThat(axis.equals("PIN") ? Axis.PIN : Axis.THRUST).isEqualTo(new Axis(degrees));
    }

    @ParameterizedTest(name = "{0}° and {1}°: {2}° apart")
    @CsvSource({"0, 90, 90", "90, 0, 90", "0, 179, 1", "179, 0, 1", "30, 75, 45", "10, 130, 60", "45, 45, 0"})
    void twoAxesAreNeverFartherApartThanARightAngle(int one, int other, int apart) {
        assertThat(new Axis(one).degreesFrom(new Axis(other))).isEqualTo(apart);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 180, 360, Integer.MIN_VALUE})
    void halfATurnIsTheSameAxisAgainAndRefused(int degrees) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Axis(degrees))
                .withMessage("axis " + degrees + "° is outside 0 to 179°");
    }
}
