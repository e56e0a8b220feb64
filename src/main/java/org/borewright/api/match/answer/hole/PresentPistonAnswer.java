package org.borewright.api.match.answer.hole;

import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownCorrection;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.rings.PresentPistonMeasured;
import org.borewright.measure.LengthUnit;

/**
 * The piston that runs in a hole, as it was measured.
 *
 * @param diameter at 20 °C
 * @param asRead as the gauge showed it
 * @param uncertainty expanded uncertainty of the diameter
 * @param budget that uncertainty term by term
 * @param correctedFrom how warm it was, and how its alloy grows
 */
public record PresentPistonAnswer(
        ShownLength diameter,
        ShownLength asRead,
        ShownLength uncertainty,
        BudgetAnswer budget,
        ShownCorrection correctedFrom) {

    /** The answer about a piston, in a unit. */
    public static PresentPistonAnswer of(PresentPistonMeasured piston, LengthUnit unit) {
        return new PresentPistonAnswer(
                ShownLength.of(piston.diameter(), unit),
                ShownLength.of(piston.read(), unit),
                ShownLength.of(piston.budget().expanded(), unit, Flattery.UNCERTAINTY),
                BudgetAnswer.of(piston.budget(), unit),
                ShownCorrection.of(piston.with().climate(), piston.alloy()));
    }
}
