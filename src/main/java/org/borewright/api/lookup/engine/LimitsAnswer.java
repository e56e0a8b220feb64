package org.borewright.api.lookup.engine;

import java.math.BigDecimal;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.ServiceLimits;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;

/**
 * The limits of an engine in service, as allowances over the present size.
 *
 * @param wear of the largest diameter
 * @param taper between depths along one axis
 * @param outOfRound between axes at one depth
 * @param deckFlatness of the gasket face
 * @param skimGreatest the most that may be skimmed off the deck in all
 * @param massSpread in grams: the most one piston may be heavier than another
 */
public record LimitsAnswer(
        ShownLength wear,
        ShownLength taper,
        ShownLength outOfRound,
        ShownLength deckFlatness,
        ShownLength skimGreatest,
        BigDecimal massSpread) {

    static LimitsAnswer of(ServiceLimits limits, LengthUnit unit) {
        return new LimitsAnswer(
                most(limits.wear(), unit),
                most(limits.taper(), unit),
                most(limits.outOfRound(), unit),
                most(limits.deckFlatness(), unit),
                most(limits.skimGreatest(), unit),
                BigDecimal.valueOf(limits.massSpreadMilligrams(), 3));
    }

    private static ShownLength most(Length limit, LengthUnit unit) {
        return ShownLength.of(limit, unit, Flattery.UPPER_LIMIT);
    }
}
