package org.borewright.api.bench.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.util.List;
import org.borewright.api.match.answer.hole.BudgetAnswer;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownCorrection;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.kit.bench.PistonInHand;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * A piston in hand.
 *
 * @param tag what it is marked with
 * @param number it was bought by
 * @param diameter at 20 °C
 * @param asRead as the gauge showed it
 * @param uncertainty expanded uncertainty of the diameter
 * @param budget that uncertainty term by term
 * @param correctedFrom how warm it was, and how its alloy grows
 * @param tolerance of its number
 * @param grams its mass; absent where it was not weighed
 * @param checks number, reading, tolerance
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record PistonAnswer(
        String tag,
        String number,
        ShownLength diameter,
        ShownLength asRead,
        ShownLength uncertainty,
        BudgetAnswer budget,
        ShownCorrection correctedFrom,
        ShownLimits tolerance,
        @Nullable BigDecimal grams,
        List<ShownCheck> checks) {

    static List<PistonAnswer> of(List<PistonInHand> pistons, LengthUnit unit) {
        return pistons.stream().map(piston -> of(piston, unit)).toList();
    }

    private static PistonAnswer of(PistonInHand piston, LengthUnit unit) {
        return new PistonAnswer(
                piston.tag(),
                piston.part().number().text(),
                ShownLength.of(piston.diameter(), unit),
                ShownLength.of(piston.noted().diameter(), unit),
                ShownLength.of(piston.uncertainty(), unit, Flattery.UNCERTAINTY),
                BudgetAnswer.of(piston.budget(), unit),
                ShownCorrection.of(piston.with().climate(), piston.alloy()),
                ShownLimits.of(piston.part().shape().diameter(), unit),
                piston.noted()
                        .milligrams()
                        .map(weighed -> BigDecimal.valueOf(weighed, 3))
                        .orElse(null),
                piston.checks().stream()
                        .map(check -> ShownCheck.of(check, unit))
                        .toList());
    }
}
