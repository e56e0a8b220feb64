package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.MassRange;

/** The masses of the pistons in one engine may differ by so much at their worst. A single has nothing to differ from. */
public final class MassSpread {

    /** Where some of a set were weighed with pin and clips, and others were not weighed. */
    public static final Check NOT_ALL_WEIGHED =
            Rule.MASS_SPREAD.unknown("", "weigh every piston of the set with its pin and clips, or every one bare");

    private MassSpread() {}

    /**
     * The worst spread of a set against the engine's limit: as heavy as the piston of one hole may be, less as light as that of another
     * hole may be. What one piston alone may weigh is no spread.
     *
     * @param set the mass range of the piston in each hole
     * @param limitMilligrams the most the heaviest may exceed the lightest, on the limit included
     */
    public static Check check(List<MassRange> set, long limitMilligrams) {
        return set.size() < 2
                ? Rule.MASS_SPREAD.notChecked("", "a single piston has no other to match")
                : Rule.MASS_SPREAD.atMost("", Amount.ofMilligrams(of(set)), Amount.ofMilligrams(limitMilligrams));
    }

    /** The worst spread of a set of two or more in milligrams. */
    public static long of(List<MassRange> set) {
        long worst = Long.MIN_VALUE;
        for (int one = 0; one < set.size(); one++) {
            for (int other = 0; other < set.size(); other++) {
                if (one != other) {
                    worst = Math.max(
                            worst,
                            set.get(one).greatestMilligrams() - set.get(other).leastMilligrams());
                }
            }
        }
        return worst;
    }
}
