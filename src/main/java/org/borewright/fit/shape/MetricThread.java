package org.borewright.fit.shape;

import java.math.BigDecimal;
import java.util.Locale;
import org.borewright.measure.Length;

/**
 * An ISO metric thread.
 *
 * @param diameter nominal diameter d
 * @param pitch P
 */
public record MetricThread(Length diameter, Length pitch) {

    /** @throws IllegalArgumentException if the pitch is not above zero or not below the diameter */
    public MetricThread {
        if (pitch.compareTo(Length.ZERO) <= 0 || !pitch.isLessThan(diameter)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "thread of %s with a pitch of %s", diameter, pitch));
        }
    }

    /** The stress area π/4·(d − 0.9382·P)² in mm² (ISO 898-1, 9.1.6.1). */
    public double stressArea() {
        double inner = diameter.toMillimetres() - 0.9382 * pitch.toMillimetres();
        return Math.PI / 4 * inner * inner;
    }

    /** The designation of ISO 965-1, such as {@code M8 × 1.25}. */
    public String label() {
        return "M" + plain(diameter) + " × " + plain(pitch);
    }

    private static String plain(Length length) {
        return BigDecimal.valueOf(length.nanometres(), 6).stripTrailingZeros().toPlainString();
    }
}
