package org.borewright.catalog;

import java.util.Optional;
import org.borewright.fit.shape.Choke;
import org.borewright.fit.shape.HonedShape;
import org.borewright.measure.Length;

/**
 * Limits of the engine maker in service, as allowances over the present size, and the choke of a finished hole.
 *
 * @param wear the largest diameter over the present size
 * @param taper between depths along one axis
 * @param outOfRound between axes at one depth
 * @param choke how much wider a finished hole is at the bottom; empty where it is to be straight
 * @param finishedShape taper and out-of-round of a freshly honed hole, each; of one with choke what it may be out of that
 * @param deckFlatness of the gasket face
 * @param skimGreatest the most that may be skimmed off the deck in all
 * @param massSpreadMilligrams the most one piston may be heavier than another
 */
public record ServiceLimits(
        Length wear,
        Length taper,
        Length outOfRound,
        Optional<Choke> choke,
        Length finishedShape,
        Length deckFlatness,
        Length skimGreatest,
        long massSpreadMilligrams) {

    /** The shape that its holes are honed to. */
    public HonedShape honed() {
        return new HonedShape(choke, finishedShape);
    }
}
