package org.borewright.measure.survey;

import java.util.Locale;

/**
 * The direction in which a diameter was taken, as an angle from the thrust axis.
 *
 * @param degrees 0 is thrust (across the pin), 90 is pin (along it); 0 to 179
 */
public record Axis(int degrees) {

    /** At right angles to the wrist pin, where the piston presses. */
    public static final Axis THRUST = new Axis(0);

    /** Parallel to the wrist pin. */
    public static final Axis PIN = new Axis(90);

    private static final int TURN = 180;

    /** @throws IllegalArgumentException if outside 0 to 179 degrees */
    public Axis {
        if (degrees < 0 || degrees > 179) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "axis %d° is outside 0 to 179°", degrees));
        }
    }

    /** The angle between two axes: 0 to 90. */
    int degreesFrom(Axis other) {
        int apart = Math.abs(degrees - other.degrees);
        return Math.min(apart, TURN - apart);
    }

    /** {@code thrust}, {@code pin}, or the angle. */
    public String label() {
        return switch (degrees) {
            case 0 -> "thrust";
            case 90 -> "pin";
            default -> degrees + "°";
        };
    }
}
