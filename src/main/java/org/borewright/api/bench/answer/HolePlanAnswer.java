package org.borewright.api.bench.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.match.answer.hole.CylinderAnswer;
import org.borewright.api.match.answer.hole.FindingAnswer;
import org.borewright.api.match.answer.hole.RingGapAnswer;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.kit.bench.HolePlan;
import org.borewright.kit.bench.PistonInHand;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.jspecify.annotations.Nullable;

/**
 * What to do to one hole, and for which piston.
 *
 * @param cylinder its name
 * @param stoodOn what is known of the hole
 * @param largest the largest diameter at 20 °C; absent when nothing was measured
 * @param smallest the smallest diameter at 20 °C; absent when nothing was measured
 * @param largestAsRead the largest as the gauge showed it
 * @param smallestAsRead the smallest as the gauge showed it
 * @param findings what was seen, and what it means; absent where nothing was
 * @param piston the number that goes in
 * @param tag of the measured piston; absent while none is, and then all else is provisional
 * @param pistonDiameter as measured, or its tolerance
 * @param work what is done to the hole
 * @param boreTo hone size less hone stock; absent when it is not bored
 * @param honeTo piston + target, or as much more as the hole needs; absent when it is not honed
 * @param honeTopTo the same at the top; absent where the hole is to be straight
 * @param honeBottomTo the same at the bottom; absent where the hole is to be straight
 * @param window the holes in which the clearance is proven; absent where the gauges are too coarse
 * @param uncertainty expanded uncertainty of the clearance, hole and piston together
 * @param ringGaps at the ends of the window
 * @param checks target, clearance, ring gaps
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record HolePlanAnswer(
        String cylinder,
        String stoodOn,
        @Nullable ShownLength largest,
        @Nullable ShownLength smallest,
        @Nullable ShownLength largestAsRead,
        @Nullable ShownLength smallestAsRead,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FindingAnswer> findings,
        String piston,
        @Nullable String tag,
        ShownLimits pistonDiameter,
        String work,
        @Nullable ShownLength boreTo,
        @Nullable ShownLength honeTo,
        @Nullable ShownLength honeTopTo,
        @Nullable ShownLength honeBottomTo,
        @Nullable ShownLimits window,
        ShownLength uncertainty,
        List<RingGapAnswer> ringGaps,
        List<ShownCheck> checks) {

    static HolePlanAnswer of(HolePlan plan, boolean mayBeCut, LengthUnit unit) {
        return new HolePlanAnswer(
                plan.hole().name(),
                CylinderAnswer.label(plan.hole().at20()),
                ShownLength.of(plan.hole().diameters().map(Limits::greatest), unit),
                ShownLength.of(plan.hole().diameters().map(Limits::least), unit),
                ShownLength.of(plan.hole().survey().asRead().largest(), unit),
                ShownLength.of(plan.hole().survey().asRead().smallest(), unit),
                FindingAnswer.of(plan.hole(), mayBeCut, unit),
                plan.part().number().text(),
                plan.piston().map(PistonInHand::tag).orElse(null),
                ShownLimits.ofRange(plan.diameter(), unit),
                plan.work().label(),
                ShownLength.of(plan.boreTo(), unit),
                ShownLength.of(plan.honeTo(), unit),
                ShownLength.of(plan.honeTopTo(), unit),
                ShownLength.of(plan.honeBottomTo(), unit),
                plan.window().map(window -> ShownLimits.of(window, unit)).orElse(null),
                ShownLength.of(plan.uncertainty(), unit, Flattery.UNCERTAINTY),
                RingGapAnswer.of(plan.ringGaps(), unit),
                plan.checks().stream().map(check -> ShownCheck.of(check, unit)).toList());
    }
}
