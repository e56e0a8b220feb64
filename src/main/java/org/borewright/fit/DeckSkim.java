package org.borewright.fit;

import org.borewright.measure.Length;

/**
 * What is skimmed off the deck against the most it bears, the limit itself included. Source: the engine's greatest skim, or less where
 * gasket and crown leave less; geometry.
 */
public final class DeckSkim {

    private DeckSkim() {}

    /**
     * The skim against its limit.
     *
     * @param kit the gasket kit that goes on the deck
     */
    public static Comparison check(String kit, Length skim, Length greatest) {
        return Rule.DECK_SKIM.atMost(kit, skim, greatest);
    }
}
