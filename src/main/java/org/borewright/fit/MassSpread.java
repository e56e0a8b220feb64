package org.borewright.fit;

import java.util.Collection;
import org.borewright.fit.shape.MassRange;

/** The masses of the pistons in one engine may differ by so much at their worst. A single has nothing to differ from. */
public final class MassSpread {

    private MassSpread() {}

    /**
     * The worst spread of a set against the engine's limit.
     *
     * @param kinds the mass range of each kind of piston in the set
     * @param count how many pistons the engine has
     * @param limitMilligrams the most the heaviest may exceed the lightest
     */
    public static Check check(Collection<MassRange> kinds, int count, long limitMilligrams) {
        if (count < 2) {
            return Rule.MASS_SPREAD.notChecked("", "a single piston has no other to match");
        }
        long heaviest =
                kinds.stream().mapToLong(MassRange::greatestMilligrams).max().orElseThrow();
        long lightest =
                kinds.stream().mapToLong(MassRange::leastMilligrams).min().orElseThrow();
        return Rule.MASS_SPREAD.atMost(
                "", Amount.ofMilligrams(heaviest - lightest), Amount.ofMilligrams(limitMilligrams));
    }
}
