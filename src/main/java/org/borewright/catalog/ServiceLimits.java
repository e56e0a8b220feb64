package org.borewright.catalog;

import org.borewright.measure.Length;

/**
 * Limits of the engine maker in service, as allowances over the present size.
 *
 * @param wear the largest diameter over the present size
 * @param taper between depths along one axis
 * @param outOfRound between axes at one depth
 * @param deckFlatness of the gasket face
 * @param skimGreatest the most that may be skimmed off the deck in all
 * @param massSpreadMilligrams the most one piston may be heavier than another
 */
public record ServiceLimits(
        Length wear,
        Length taper,
        Length outOfRound,
        Length deckFlatness,
        Length skimGreatest,
        long massSpreadMilligrams) {}
