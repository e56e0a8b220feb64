package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * How near the piston comes to the head: deck = barrel height + base gasket − skim − (stroke/2 + rod + compression height), then the
 * compressed head gasket on top, less a dome under a flat head. Source: geometry.
 */
public final class PistonToHead {

    private PistonToHead() {}

    /** The deck clearance, least rounded down and greatest rounded up; negative where the crown stands proud of the deck. */
    public static Limits deck(DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        Length taken = skim.plus(deck.rod()).plus(crown.compressionHeight());
        Limits barrel = deck.barrelHeight();
        Limits base = gasket.baseThickness();
        return new Limits(
                barrel.least()
                        .plus(base.least())
                        .minus(taken)
                        .minus(deck.stroke().halfRoundedUp()),
                barrel.greatest()
                        .plus(base.greatest())
                        .minus(taken)
                        .minus(deck.stroke().halfRoundedDown()));
    }

    /** The distance from piston to head, least and greatest. */
    public static Limits of(DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        Length dome = deck.head().flat() ? crown.domeHeight() : Length.ZERO;
        Limits stack = deck(deck, gasket, crown, skim).plus(Length.ZERO.minus(dome));
        return new Limits(
                stack.least().plus(gasket.headThickness().least()),
                stack.greatest().plus(gasket.headThickness().greatest()));
    }

    /** Both distances against the engine's limits. */
    public static List<Comparison> check(DeckShape deck, GasketShape gasket, Crown crown, Length skim) {
        Limits distance = of(deck, gasket, crown, skim);
        return List.of(
                Rule.PISTON_TO_HEAD_LEAST.atLeast(
                        "", distance.least(), deck.pistonToHead().least()),
                Rule.PISTON_TO_HEAD_GREATEST.atMost(
                        "", distance.greatest(), deck.pistonToHead().greatest()));
    }
}
