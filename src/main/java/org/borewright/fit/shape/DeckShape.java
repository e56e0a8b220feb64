package org.borewright.fit.shape;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * Everything between crankshaft and head that decides how near the piston comes.
 *
 * @param barrelHeight from the crankshaft's axis to the deck, without the base gasket
 * @param stroke twice the crank throw
 * @param rod between the centres of the rod
 * @param pistonToHead the distance allowed at top dead centre, gasket compressed
 * @param head the chamber over it
 */
public record DeckShape(Limits barrelHeight, Length stroke, Length rod, Limits pistonToHead, HeadShape head) {}
