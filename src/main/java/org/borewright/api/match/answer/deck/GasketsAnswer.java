package org.borewright.api.match.answer.deck;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.catalog.Shelf;
import org.borewright.fit.Amount;
import org.borewright.fit.Check;
import org.borewright.kit.choice.GasketFit;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * A set of gaskets over the pistons of the size named.
 *
 * @param kit the gasket kit
 * @param head the head gasket in place of the kit's own; absent where that goes on
 * @param base the base gasket in place of the kit's own; absent where that goes on, or there is none
 * @param rank its place among those that are admissible; absent where something stands against it
 * @param deckHeight from the crown's edge up to the deck; negative where it stands proud
 * @param pistonToHead the distance at top dead centre
 * @param compressionRatio the lowest and the highest that the tolerances allow, at the finish
 * @param portsHigher of a two-stroke, by how much its ports stand higher than as made; absent where they stay
 * @param against the checks that stand against it; empty where it is admissible
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record GasketsAnswer(
        String kit,
        @Nullable String head,
        @Nullable String base,
        @Nullable Integer rank,
        ShownLimits deckHeight,
        ShownLimits pistonToHead,
        RatiosAnswer compressionRatio,
        @Nullable ShownLength portsHigher,
        List<ShownCheck> against) {

    /**
     * A range of ratios, two decimals.
     *
     * @param lowest rounded down; absent where there is no room above the piston
     * @param highest rounded up; absent where there may be no room above the piston
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record RatiosAnswer(
            @Nullable BigDecimal lowest, @Nullable BigDecimal highest) {

        private static @Nullable BigDecimal shown(Amount ratio, RoundingMode rounding) {
            return ratio.isEndless()
                    ? null
                    : BigDecimal.valueOf(ratio.units(), 6).setScale(2, rounding);
        }

        static RatiosAnswer of(GasketFit fit) {
            return new RatiosAnswer(
                    shown(fit.lowestRatio(), RoundingMode.FLOOR), shown(fit.highestRatio(), RoundingMode.CEILING));
        }
    }

    /** Sets of gaskets in the order in which they are preferred. */
    public static List<GasketsAnswer> of(Shelf shelf, List<GasketFit> ranked, LengthUnit unit) {
        List<GasketsAnswer> shown = new ArrayList<>(ranked.size());
        for (GasketFit fit : ranked) {
            shown.add(of(shelf, fit, shown.size() + 1, unit));
        }
        return shown;
    }

    private static GasketsAnswer of(Shelf shelf, GasketFit fit, int rank, LengthUnit unit) {
        return new GasketsAnswer(
                fit.gaskets().kit().number().text(),
                fit.gaskets().head().map(head -> head.number().text()).orElse(null),
                fit.gaskets().base().map(base -> base.number().text()).orElse(null),
                fit.fits() ? rank : null,
                ShownLimits.ofRange(fit.deckHeight(), unit),
                ShownLimits.ofRange(fit.pistonToHead(), unit),
                RatiosAnswer.of(fit),
                ShownLength.of(shelf.portsHigher(fit.gaskets()), unit),
                Check.holding(fit.checks()).stream()
                        .map(check -> ShownCheck.of(check, unit))
                        .toList());
    }
}
