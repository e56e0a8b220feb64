package org.borewright.measure;

import java.util.List;
import java.util.Locale;

/**
 * The least and the greatest a length may be, both inclusive: a tolerance, a window, a range.
 *
 * @param least the lower limit, not more than {@code greatest}
 * @param greatest the upper limit
 */
public record Limits(Length least, Length greatest) {

    /** @throws IllegalArgumentException if the least is more than the greatest */
    public Limits {
        if (least.isMoreThan(greatest)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "least %s is more than greatest %s", least, greatest));
        }
    }

    /** Limits around one exact length. */
    public static Limits exactly(Length length) {
        return new Limits(length, length);
    }

    /**
     * The smallest and the largest of some lengths.
     *
     * @param lengths at least one
     */
    public static Limits around(List<Length> lengths) {
        Length least = lengths.get(0);
        Length greatest = least;
        for (Length length : lengths) {
            least = least.min(length);
            greatest = greatest.max(length);
        }
        return new Limits(least, greatest);
    }

    /** The distance from the least to the greatest. */
    public Length width() {
        return greatest.minus(least);
    }

    /** Both limits moved by the same length. */
    public Limits plus(Length shift) {
        return new Limits(least.plus(shift), greatest.plus(shift));
    }

    /** What is left between this and a thing inside it: the least against the other's greatest, and the other way round. */
    public Limits minus(Limits inside) {
        return new Limits(least.minus(inside.greatest), greatest.minus(inside.least));
    }

    /** Whether the length lies within the limits, on the limit included. */
    public boolean hold(Length length) {
        return !length.isLessThan(least) && !length.isMoreThan(greatest);
    }
}
