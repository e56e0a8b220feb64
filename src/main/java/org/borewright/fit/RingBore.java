package org.borewright.fit;

import org.borewright.measure.Length;

/** A ring set is made for one nominal bore, and it is the piston's (ISO 6621-2): the label does not save a standard ring. */
public final class RingBore {

    private RingBore() {}

    /** The nominal bore of the set against the piston's. */
    public static Comparison check(Length ringBore, Length pistonBore) {
        return Comparison.exact(Rule.RING_BORE, "", Amount.of(ringBore), Sense.EXACTLY, Amount.of(pistonBore));
    }
}
