package org.borewright.api.bench.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.match.answer.hole.BudgetAnswer;
import org.borewright.api.match.answer.hole.CylinderAnswer;
import org.borewright.api.match.answer.hole.FindingAnswer;
import org.borewright.api.match.answer.hole.RingGapAnswer;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.kit.bench.PistonInHand;
import org.borewright.kit.bench.finish.JudgedHole;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.jspecify.annotations.Nullable;

/**
 * A finished hole with its piston, judged.
 *
 * @param cylinder its name
 * @param judgement pass, too close to call, or hold
 * @param stoodOn what is known of the hole
 * @param largest the largest diameter at 20 °C; absent when nothing was measured
 * @param smallest the smallest diameter at 20 °C; absent when nothing was measured
 * @param largestAsRead the largest as the gauge showed it
 * @param smallestAsRead the smallest as the gauge showed it
 * @param budget the uncertainty of a diameter, term by term; absent when nothing was measured
 * @param shape taper and out-of-round; absent without a grid
 * @param findings what was seen, and what it means; absent where nothing was
 * @param piston the number that goes in
 * @param tag of the measured piston; absent where its tolerance is reckoned with
 * @param clearance at its worst both ways; absent where it cannot be known
 * @param ringGaps at the smallest and the largest place
 * @param checks the piston's place, clearance, shape, ring gaps
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record JudgedHoleAnswer(
        String cylinder,
        String judgement,
        String stoodOn,
        @Nullable ShownLength largest,
        @Nullable ShownLength smallest,
        @Nullable ShownLength largestAsRead,
        @Nullable ShownLength smallestAsRead,
        @Nullable BudgetAnswer budget,
        CylinderAnswer.@Nullable ShapeAnswer shape,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FindingAnswer> findings,
        String piston,
        @Nullable String tag,
        @Nullable ShownLimits clearance,
        List<RingGapAnswer> ringGaps,
        List<ShownCheck> checks) {

    static JudgedHoleAnswer of(JudgedHole judged, boolean mayBeCut, LengthUnit unit) {
        return new JudgedHoleAnswer(
                judged.hole().name(),
                judged.judgement().label(),
                CylinderAnswer.label(judged.hole().at20()),
                ShownLength.of(judged.hole().diameters().map(Limits::greatest), unit),
                ShownLength.of(judged.hole().diameters().map(Limits::least), unit),
                ShownLength.of(judged.hole().survey().asRead().largest(), unit),
                ShownLength.of(judged.hole().survey().asRead().smallest(), unit),
                judged.hole()
                        .budget()
                        .map(budget -> BudgetAnswer.of(budget, unit))
                        .orElse(null),
                judged.shape()
                        .map(shape -> CylinderAnswer.ShapeAnswer.of(shape, unit))
                        .orElse(null),
                FindingAnswer.of(judged.hole(), mayBeCut, unit),
                judged.part().number().text(),
                judged.piston().map(PistonInHand::tag).orElse(null),
                judged.clearance()
                        .map(clearance -> ShownLimits.ofRange(clearance, unit))
                        .orElse(null),
                RingGapAnswer.of(judged.ringGaps(), unit),
                judged.checks().stream()
                        .map(check -> ShownCheck.of(check, unit))
                        .toList());
    }
}
