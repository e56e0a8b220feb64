package org.borewright.kit.hole;

import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.fit.Certainty;
import org.borewright.measure.Length;

/**
 * What becomes of one hole at one size.
 *
 * @param cylinder its name
 * @param work what is done to it
 * @param certainty whether it comes out right
 * @param piston the piston that goes in
 * @param metal what is taken off its diameter: finish less the smallest reading; empty when nothing was
 *     measured or the hole is larger already
 * @param finish what the hole is cut to for the smallest such piston; of no meaning where nothing is cut
 */
public record HoleAtSize(
        String cylinder, Work work, Certainty certainty, Piston piston, Optional<Length> metal, Length finish) {

    /** A hole that goes to the target of its piston. */
    public HoleAtSize(String cylinder, Work work, Certainty certainty, Piston piston, Optional<Length> metal) {
        this(cylinder, work, certainty, piston, metal, piston.shape().finishForCleanUp());
    }

    /** Whether the piston may run in the hole with nothing cut, proven or not. */
    public boolean runsAsItIs() {
        return work == Work.AS_IS && certainty != Certainty.NO;
    }

    static HoleAtSize of(Hole hole, Work work, Certainty certainty, Piston piston) {
        return of(hole, work, certainty, piston, piston.shape().finishForCleanUp());
    }

    /** A hole that is cut to a finish of its own. */
    static HoleAtSize of(Hole hole, Work work, Certainty certainty, Piston piston, Length finish) {
        Optional<Length> metal = work == Work.AS_IS
                ? Optional.of(Length.ZERO)
                : hole.diameters()
                        .map(measured -> finish.minus(measured.least()))
                        .filter(taken -> !taken.isNegative());
        return new HoleAtSize(hole.name(), work, certainty, piston, metal, finish);
    }
}
