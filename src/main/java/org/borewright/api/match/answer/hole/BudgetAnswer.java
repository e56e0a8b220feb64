package org.borewright.api.match.answer.hole;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.Uncertainty.Term;
import org.jspecify.annotations.Nullable;

/**
 * Where the uncertainty of a diameter comes from: standard uncertainties, each rounded up.
 *
 * @param gauge from the gauge's calibration
 * @param resolution from its smallest step
 * @param repeatability from the scatter of one reading; absent where it adds nothing
 * @param temperature from the temperature of the block
 * @param expansion from the growth of the wall; absent where it adds nothing
 * @param ring from the growth of the setting ring; absent where it adds nothing
 * @param combined of all terms
 * @param mattersMost the largest term
 * @param next what makes that term smaller
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BudgetAnswer(
        @Nullable ShownLength gauge,
        @Nullable ShownLength resolution,
        @Nullable ShownLength repeatability,
        @Nullable ShownLength temperature,
        @Nullable ShownLength expansion,
        @Nullable ShownLength ring,
        ShownLength combined,
        String mattersMost,
        String next) {

    /** A budget in a unit. */
    public static BudgetAnswer of(Uncertainty budget, LengthUnit unit) {
        Term most = budget.mattersMost();
        return new BudgetAnswer(
                term(budget.gauge(), unit),
                term(budget.resolution(), unit),
                term(budget.repeatability(), unit),
                term(budget.temperature(), unit),
                term(budget.expansion(), unit),
                term(budget.ring(), unit),
                standard(budget.combined(), unit),
                most.label(),
                most.wayOut());
    }

    private static @Nullable ShownLength term(double nanometres, LengthUnit unit) {
        return nanometres > 0 ? standard(nanometres, unit) : null;
    }

    private static ShownLength standard(double nanometres, LengthUnit unit) {
        return ShownLength.of(Length.ofNanometres((long) Math.ceil(nanometres)), unit, Flattery.UNCERTAINTY);
    }
}
