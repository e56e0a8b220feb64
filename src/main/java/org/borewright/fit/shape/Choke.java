package org.borewright.fit.shape;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * How much wider a finished hole is at the bottom than at the top, on purpose: it is to run straight once the top is hot. Source: the
 * engine maker.
 *
 * @param bottomMinusTop least and greatest; below zero where the top is to be wider
 */
public record Choke(Limits bottomMinusTop) {

    /** How far either end lies from the mean of a hole in the middle of the window, not negative; to the nanometre below. */
    public Length eachWay() {
        return aimed().absolute();
    }

    /** The top of a hole of a mean diameter, in the middle of the window. */
    public Length atTop(Length mean) {
        return mean.minus(aimed());
    }

    /** The bottom of a hole of a mean diameter, in the middle of the window. */
    public Length atBottom(Length mean) {
        return mean.plus(aimed());
    }

    /** The most that the ends of any hole in the window differ by. */
    public Length greatestDifference() {
        return bottomMinusTop.greatest().max(Length.ZERO.minus(bottomMinusTop.least()));
    }

    /** The least that the ends of any hole in the window differ by. */
    public Length leastDifference() {
        Length least = bottomMinusTop.least().max(Length.ZERO.minus(bottomMinusTop.greatest()));
        return least.max(Length.ZERO);
    }

    private Length aimed() {
        return bottomMinusTop
                .least()
                .plus(bottomMinusTop.greatest())
                .halfRoundedDown()
                .halfRoundedDown();
    }
}
