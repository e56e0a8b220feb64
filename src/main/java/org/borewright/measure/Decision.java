package org.borewright.measure;

import java.util.Locale;

/**
 * What may be said of a value against a limit (ISO 14253-1, JCGM 106 8.3: guarded by the expanded uncertainty on both sides).
 */
public enum Decision {
    /** Within the limit by at least the uncertainty. */
    IN,
    /** Beyond the limit by at least the uncertainty (or, between exact figures, beyond it at all). */
    OUT,
    /** Nearer to the limit than the uncertainty: nothing is proven. */
    TOO_CLOSE;

    /**
     * The decision for a margin, positive inside the limit. With no uncertainty (part against part) the limit is inclusive.
     *
     * @param margin how far inside the limit; negative when beyond it
     * @param uncertainty the expanded uncertainty of the value, not negative
     * @throws IllegalArgumentException if the uncertainty is negative
     */
    public static Decision of(long margin, long uncertainty) {
        if (uncertainty < 0) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "an uncertainty of %d is negative", uncertainty));
        }
        if (margin >= uncertainty) {
            return IN;
        }
        return margin <= -uncertainty ? OUT : TOO_CLOSE;
    }
}
