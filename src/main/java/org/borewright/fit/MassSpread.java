package org.borewright.fit;

import java.util.Collection;
import org.borewright.fit.shape.MassRange;

/** The masses of the pistons in one engine may differ by so much at their worst. A single has nothing to differ from. */
public final class MassSpread {

    private MassSpread() {}

    /**
     * The worst spread of a set against the engine's limit.
     *
     * @param limitMilligrams the most the heaviest may exceed the lightest
     */
    public static Check check(Collection<MassRange> set, long limitMilligrams) {
        if (set.size() < 2) {
            return Rule.MASS_SPREAD.notChecked("", "a single piston has no other to match");
        }
        long heaviest =
                set.stream().mapToLong(MassRange::greatestMilligrams).max().orElseThrow();
        long lightest = set.stream().mapToLong(MassRange::leastMilligrams).min().orElseThrow();
        return Rule.MASS_SPREAD.atMost(
                "", Amount.ofMilligrams(heaviest - lightest), Amount.ofMilligrams(limitMilligrams));
    }
}
