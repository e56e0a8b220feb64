package org.borewright.api.lookup.engine;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.catalog.ServiceLimits;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The limits of an engine in service, as allowances over the present size.
 *
 * @param wear of the largest diameter
 * @param taper between depths along one axis
 * @param outOfRound between axes at one depth
 * @param choke how much wider a finished hole is at the bottom; absent where it is to be straight
 * @param finishedShape taper and out-of-round of a freshly honed hole, each
 * @param deckFlatness of the gasket face
 * @param skimGreatest the most that may be skimmed off the deck in all
 * @param massSpread in grams: the most one piston may be heavier than another
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record LimitsAnswer(
        ShownLength wear,
        ShownLength taper,
        ShownLength outOfRound,
        @Nullable ShownLimits choke,
        ShownLength finishedShape,
        ShownLength deckFlatness,
        ShownLength skimGreatest,
        BigDecimal massSpread) {

    static LimitsAnswer of(ServiceLimits limits, LengthUnit unit) {
        return new LimitsAnswer(
                most(limits.wear(), unit),
                most(limits.taper(), unit),
                most(limits.outOfRound(), unit),
                limits.choke()
                        .map(choke -> ShownLimits.of(choke.bottomMinusTop(), unit))
                        .orElse(null),
                most(limits.finishedShape(), unit),
                most(limits.deckFlatness(), unit),
                most(limits.skimGreatest(), unit),
                BigDecimal.valueOf(limits.massSpreadMilligrams(), 3));
    }

    private static ShownLength most(Length limit, LengthUnit unit) {
        return ShownLength.of(limit, unit, Flattery.UPPER_LIMIT);
    }
}
