package org.borewright.fit;

import org.borewright.measure.Length;

/**
 * All that was and is to be skimmed off the deck against the most it bears, the limit itself included. Source: the engine's greatest skim
 * in all, or less where gasket and crown leave less; geometry.
 */
public final class DeckSkim {

    private DeckSkim() {}

    /**
     * All skims together against their limit.
     *
     * @param place the gaskets that go on the deck, or what the skim is for
     */
    public static Comparison check(String place, Length skims, Length greatest) {
        return Rule.DECK_SKIM.atMost(place, skims, greatest);
    }

    /** The skims against what the engine bears whatever gaskets go on: beyond it no thicker gasket helps. */
    public static Comparison ofEngine(Length skims, Length greatest) {
        return Rule.ENGINE_SKIM.atMost("", skims, greatest);
    }
}
