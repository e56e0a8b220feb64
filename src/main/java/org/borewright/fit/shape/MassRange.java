package org.borewright.fit.shape;

import java.util.List;
import java.util.Locale;

/**
 * The least and greatest mass of a part in its tolerance.
 *
 * @param leastMilligrams not negative
 * @param greatestMilligrams not less than the least
 */
public record MassRange(long leastMilligrams, long greatestMilligrams) {

    /**
     * From the lightest to the heaviest that any of some parts may be.
     *
     * @param parts at least one
     */
    public static MassRange around(List<MassRange> parts) {
        return new MassRange(
                parts.stream().mapToLong(MassRange::leastMilligrams).min().orElseThrow(),
                parts.stream().mapToLong(MassRange::greatestMilligrams).max().orElseThrow());
    }

    /** @throws IllegalArgumentException unless 0 ≤ least ≤ greatest */
    public MassRange {
        if (leastMilligrams < 0 || leastMilligrams > greatestMilligrams) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "mass least %s mg, greatest %s mg do not rise from 0",
                    leastMilligrams,
                    greatestMilligrams));
        }
    }
}
