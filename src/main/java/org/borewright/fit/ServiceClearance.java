package org.borewright.fit;

import org.borewright.fit.shape.DeckShape;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/**
 * The clearance of a measured piston in the worn hole it has run in, both at 20 °C: the largest diameter across the thrust faces where the
 * skirt sweeps, less the piston. Source: the piston maker's wear limit; geometry.
 */
public final class ServiceClearance {

    private ServiceClearance() {}

    /**
     * From which depth below the deck a skirt sweeps the hole: barrel − stroke/2 − rod, where the pin stands at top dead centre, for the skirt
     * is measured below its pin (common practice). At the least, the gasket below the barrel left out; nothing bounds it downward.
     *
     * @param skimmed off the deck before the hole was read
     */
    public static Length sweptFrom(DeckShape deck, Length skimmed) {
        return deck.barrelHeight()
                .least()
                .minus(skimmed)
                .minus(deck.stroke().halfRoundedUp())
                .minus(deck.rod());
    }

    /** The clearance against the most in service, as uncertain as hole and piston together. */
    public static Comparison check(
            Length hole, Uncertainty ofHole, Length piston, Uncertainty ofPiston, Length wearLimit) {
        return Rule.SERVICE_CLEARANCE.atMost("", hole.minus(piston), wearLimit).within(ofHole, ofPiston);
    }
}
