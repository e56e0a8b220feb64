package org.borewright.fit;

import org.borewright.measure.Length;

/** The metal between two holes: pitch − (B1 + B2)/2, rounded down. Source: geometry; the least bridge is the engine's. */
public final class Bridge {

    private Bridge() {}

    /** The bridge left between two holes at their largest finishes. */
    public static Length left(Length pitch, Length finish, Length nextFinish) {
        return pitch.minus(finish.plus(nextFinish).halfRoundedUp());
    }

    /** The bridge left against the engine's least, named by its two holes. */
    public static Comparison check(String holes, Length pitch, Length finish, Length nextFinish, Length least) {
        return Rule.BRIDGE.atLeast(holes, left(pitch, finish, nextFinish), least);
    }
}
