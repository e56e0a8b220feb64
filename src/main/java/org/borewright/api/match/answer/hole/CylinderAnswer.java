package org.borewright.api.match.answer.hole;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownCheck;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.fit.CleanUp;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.HoleReport;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.BoreShape;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.QueriedGrid;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.jspecify.annotations.Nullable;

/**
 * What is said of one hole. All diameters at 20 °C.
 *
 * @param cylinder its name
 * @param stoodOn the knowledge it stands on: nothing measured, single diameter, grid, queried grid, each perhaps with a probed wall
 * @param largest the largest diameter
 * @param smallest the smallest diameter
 * @param largestAsRead the largest as the gauge showed it
 * @param smallestAsRead the smallest as the gauge showed it
 * @param uncertainty expanded uncertainty of one diameter
 * @param budget that uncertainty term by term
 * @param shape taper and out-of-round; absent without a grid
 * @param whenNew the size when new, and what tells
 * @param wear the largest diameter less the size when new
 * @param cleanUp by the bar, best and worst
 * @param findings what was seen, and what it means
 * @param work what is done at the size named
 * @param piston the piston that goes in
 * @param finish the hole at target clearance of the smallest piston
 * @param metalRemoved finish less the smallest reading
 * @param clearance asked for; for a hole left as it is, the one it has at its worst
 * @param ringGaps there
 * @param checks clean-up, wall, clearance, shape, gaps
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record CylinderAnswer(
        String cylinder,
        String stoodOn,
        @Nullable ShownLength largest,
        @Nullable ShownLength smallest,
        @Nullable ShownLength largestAsRead,
        @Nullable ShownLength smallestAsRead,
        @Nullable ShownLength uncertainty,
        @Nullable BudgetAnswer budget,
        @Nullable ShapeAnswer shape,
        @Nullable WhenNewAnswer whenNew,
        @Nullable ShownLength wear,
        @Nullable CleanUpAnswer cleanUp,
        List<FindingAnswer> findings,
        @Nullable String work,
        @Nullable String piston,
        @Nullable ShownLength finish,
        @Nullable ShownLength metalRemoved,
        @Nullable ClearanceAnswer clearance,
        List<RingGapAnswer> ringGaps,
        List<ShownCheck> checks) {

    /**
     * The shape of a hole.
     *
     * @param form straight, barrel, bell-mouth, waist, or narrows downward
     * @param taper the greatest difference along one axis between depths
     * @param bottomMinusTop the signed difference on that axis
     * @param outOfRound the greatest difference between axes at one depth
     */
    public record ShapeAnswer(String form, ShownLength taper, ShownLength bottomMinusTop, ShownLength outOfRound) {

        /** A shape in a unit. */
        public static ShapeAnswer of(BoreShape shape, LengthUnit unit) {
            return new ShapeAnswer(
                    shape.form().label(),
                    ShownLength.of(shape.taper(), unit),
                    ShownLength.of(shape.bottomMinusTop(), unit),
                    ShownLength.of(shape.outOfRound(), unit));
        }
    }

    /**
     * The size when new.
     *
     * @param diameter it had
     * @param from what tells
     */
    public record WhenNewAnswer(ShownLength diameter, String from) {}

    /**
     * The clean-up of a worn hole by the bar.
     *
     * @param best wear shared evenly; absent when nothing was measured
     * @param worst all wear on one wall, or the probed wall; absent when it cannot be known
     * @param reach the least at which the bar reaches the probed wall; absent where nothing is concluded from a probe
     * @param guard what the worst must be cleared by, twice the uncertainty; a size that misses the reach by more is ruled out
     * @param budget what that uncertainty is made of, where a wall was probed with something worth less than the gauge; else it is that of the hole
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record CleanUpAnswer(
            @Nullable ShownLength best,
            @Nullable ShownLength worst,
            @Nullable ShownLength reach,
            ShownLength guard,
            @Nullable BudgetAnswer budget) {

        static CleanUpAnswer of(CleanUp cleanUp, Hole hole, LengthUnit unit) {
            boolean isOfProbe = hole.budget().isPresent() && !hole.ofDeciding().equals(hole.ofReading());
            return new CleanUpAnswer(
                    ShownLength.of(cleanUp.best(), unit),
                    ShownLength.of(cleanUp.worst(), unit),
                    ShownLength.of(cleanUp.reach(), unit),
                    ShownLength.of(cleanUp.guard(), unit, Flattery.UNCERTAINTY),
                    isOfProbe ? BudgetAnswer.of(hole.ofDeciding(), unit) : null);
        }
    }

    /**
     * Piston clearance, both diameters at 20 °C.
     *
     * @param least asked for, or had
     * @param target to hone for; absent for a hole left as it is
     * @param greatest asked for, or had
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record ClearanceAnswer(
            ShownLength least, @Nullable ShownLength target, ShownLength greatest) {}

    /** The answer about a hole, in a unit. */
    public static CylinderAnswer of(HoleReport report, boolean mayBeCut, LengthUnit unit) {
        Hole hole = report.hole();
        Optional<HoleAtSize> fate = report.atSize();
        return new CylinderAnswer(
                hole.name(),
                stoodOn(hole),
                ShownLength.of(hole.diameters().map(Limits::greatest), unit),
                ShownLength.of(hole.diameters().map(Limits::least), unit),
                ShownLength.of(hole.survey().asRead().largest(), unit),
                ShownLength.of(hole.survey().asRead().smallest(), unit),
                hole.budget().isEmpty() ? null : ShownLength.of(hole.uncertainty(), unit, Flattery.UNCERTAINTY),
                hole.budget().map(budget -> BudgetAnswer.of(budget, unit)).orElse(null),
                report.shape().map(shape -> ShapeAnswer.of(shape, unit)).orElse(null),
                hole.whenNew()
                        .map(known -> new WhenNewAnswer(
                                ShownLength.of(known.diameter(), unit),
                                known.from().label()))
                        .orElse(null),
                report.cleanUp().isPresent() ? ShownLength.of(hole.wear(), unit) : null,
                report.cleanUp()
                        .map(cleanUp -> CleanUpAnswer.of(cleanUp, hole, unit))
                        .orElse(null),
                FindingAnswer.of(hole, mayBeCut, unit),
                fate.map(at -> at.work().label()).orElse(null),
                fate.map(at -> at.piston().number().text()).orElse(null),
                ShownLength.of(fate.map(HoleAtSize::finish), unit),
                ShownLength.of(fate.flatMap(HoleAtSize::metal), unit),
                fate.map(at -> clearance(hole, at, unit)).orElse(null),
                RingGapAnswer.of(report.ringGaps(), unit),
                report.checks().stream()
                        .map(check -> ShownCheck.of(check, unit))
                        .toList());
    }

    private static String stoodOn(Hole hole) {
        String measured = label(hole.at20());
        return hole.isProbed() ? measured + ", wall probed" : measured;
    }

    /** The knowledge of a hole in words, a probed wall apart. */
    public static String label(Survey survey) {
        if (survey instanceof Grid) {
            return "grid";
        }
        if (survey instanceof QueriedGrid) {
            return "queried grid";
        }
        return survey instanceof SingleDiameter ? "single diameter" : "nothing measured";
    }

    private static ClearanceAnswer clearance(Hole hole, HoleAtSize fate, LengthUnit unit) {
        PistonShape piston = fate.piston().shape();
        if (fate.work() == Work.AS_IS && hole.diameters().isPresent()) {
            ShownLimits had = ShownLimits.ofRange(hole.diameters().get().minus(piston.diameter()), unit);
            return new ClearanceAnswer(had.least(), null, had.greatest());
        }
        Length target = piston.clearance().target();
        ShownLimits asked = ShownLimits.of(piston.clearance().limits(), unit);
        return new ClearanceAnswer(asked.least(), ShownLength.of(target, unit), asked.greatest());
    }
}
