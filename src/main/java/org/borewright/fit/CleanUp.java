package org.borewright.fit;

import java.util.Optional;
import org.borewright.measure.Length;

/**
 * The diameter at which a worn hole comes out clean, at its best and at its worst. The bar is centred on the original axis, so the
 * wall that wore furthest decides. Source: geometry; centring error and hone figures are common practice.
 *
 * @param worst all wear on one wall, defects at the worst place, or the probed wall; empty when that cannot be known
 * @param best wear shared evenly; empty when nothing was measured
 * @param reach the least diameter at which the bar reaches the probed wall; empty where nothing is concluded from a probe
 * @param guard of the worst and of the reach: twice the uncertainty of what decides, a diameter or the probed wall, for both count it twice
 * @param uncertainty of a single diameter, the guard of the best
 */
public record CleanUp(
        Optional<Length> worst, Optional<Length> best, Optional<Length> reach, Length guard, Length uncertainty) {

    /** Nothing measured: nothing is certain and nothing is excluded. */
    public static final CleanUp UNKNOWN =
            new CleanUp(Optional.empty(), Optional.empty(), Optional.empty(), Length.ZERO, Length.ZERO);

    /** All wear on one wall of one place: 2·D − D0 + 2e + 2d. */
    public static Length worstAt(Length diameter, Length whenNew, Length centringError, Length defect) {
        return diameter.doubled().minus(whenNew).plus(centringError.doubled()).plus(defect.doubled());
    }

    /** Wear shared evenly at one place: D + 2d. */
    public static Length bestAt(Length diameter, Length defect) {
        return diameter.plus(defect.doubled());
    }

    /** The wall probed: 2r, and 2e more where the radius was not taken from the bar's own axis. */
    public static Length probed(Length radius, Length centringError, boolean fromBarAxis) {
        return radius.plus(fromBarAxis ? Length.ZERO : centringError).doubled();
    }

    /** The least that the bar needs to reach the probed wall: 2r, and 2e less where the bar may stand nearer to it than that axis. */
    public static Length reached(Length radius, Length centringError, boolean fromBarAxis) {
        return radius.minus(fromBarAxis ? Length.ZERO : centringError).doubled();
    }

    /** Whether a hole bored and honed to a finish comes out clean, leaving the hone its stock. */
    public Certainty at(Length finish, Length honeStock) {
        Length bar = finish.minus(honeStock);
        if (worst.isPresent() && !bar.minus(worst.get()).isLessThan(guard)) {
            return Certainty.CERTAIN;
        }
        return isBelow(bar, best, uncertainty) || isBelow(bar, reach, guard) ? Certainty.NO : Certainty.POSSIBLE;
    }

    /** Whether another proves a smaller finish, though its worst be no less: what is read so much better. */
    public boolean isWorthLessThan(CleanUp other) {
        return worst.flatMap(mine -> other.worst
                        .filter(theirs -> !theirs.isLessThan(mine))
                        .filter(theirs -> theirs.plus(other.guard).isLessThan(mine.plus(guard))))
                .isPresent();
    }

    private static boolean isBelow(Length bar, Optional<Length> needed, Length guard) {
        return needed.filter(least -> bar.minus(least).plus(guard).isNegative()).isPresent();
    }

    /**
     * How near the bar's own axis the farthest wall must prove to lie for a finish to be certain: (finish − hone stock − guard)/2, less
     * the depth of what is to be cut out behind it, rounded down. Off the original axis it must lie nearer by the centring error.
     */
    public static Length wallWithin(Length finish, Length honeStock, Length guard, Length defect) {
        return finish.minus(honeStock).minus(guard).halfRoundedDown().minus(defect);
    }
}
