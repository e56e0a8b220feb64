package org.borewright.fit;

import org.borewright.measure.Length;

/** A hone follows the hole, so it needs no centring and no stock beyond the largest reading (common practice). */
public final class HoneOnly {

    private HoneOnly() {}

    /**
     * The clean-up of a hone: the largest reading + 2 × the depth of a defect, and a little more, best and worst alike.
     *
     * @param beyond what the engine's hone takes beyond the largest reading to leave no uncut patch, on the diameter
     */
    public static Length cleanUp(Length largest, Length defect, Length beyond) {
        return largest.plus(defect.doubled()).plus(beyond);
    }

    /** Whether a hone alone brings a hole clean to a finish: certain from U above, no from U below. */
    public static Certainty at(Length finish, Length cleanUp, Length uncertainty) {
        Length margin = finish.minus(cleanUp);
        if (!margin.isLessThan(uncertainty)) {
            return Certainty.CERTAIN;
        }
        return margin.plus(uncertainty).isNegative() ? Certainty.NO : Certainty.POSSIBLE;
    }
}
