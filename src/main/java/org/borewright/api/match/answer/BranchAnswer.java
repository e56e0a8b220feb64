package org.borewright.api.match.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.borewright.api.match.answer.size.SizeAnswer;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownMoney;
import org.borewright.api.shown.Stencil;
import org.borewright.kit.bill.Job;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.ladder.Branch;
import org.borewright.kit.ladder.LargestHole;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One way to restore an engine that is not measured yet, and what it would come to.
 *
 * @param way what is done
 * @param size it goes to; absent for rings only and for a sleeve
 * @param certainty as far as is known
 * @param says when it will do, in one sentence
 * @param open what is not known, or stands against it
 * @param largestHole the reading that decides; absent where every hole is measured, or no reading decides
 * @param kit in short; absent for a sleeve, and where something stands against it
 * @param operations what the shop does; absent for a sleeve, and where something stands against it
 * @param total parts and work; absent where no kit is complete
 * @param ready the day it can go out; absent where no kit is complete
 * @param rebuildsLeft after it; absent where they are not known
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BranchAnswer(
        String way,
        @Nullable SizeAnswer size,
        String certainty,
        String says,
        List<String> open,
        @Nullable LargestHoleAnswer largestHole,
        @Nullable Stencil<SizeRowAnswer.KitSummary> kit,
        @Nullable OperationsAnswer operations,
        @Nullable ShownMoney total,
        @Nullable LocalDate ready,
        @Nullable RebuildsLeft rebuildsLeft) {

    /**
     * How large the largest hole may read, with the gauge and at the temperature of the request.
     *
     * @param certainFrom how small a hole may read in a wall that is never cut; absent where the smallest of the present size may
     * @param certainUpTo for the way to be certain, all wear on one wall; absent where no reading makes it so
     * @param possibleUpTo for it to be possible, the wear shared evenly; absent where what is certain is all that is possible
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record LargestHoleAnswer(
            @Nullable ShownLength certainFrom,
            @Nullable ShownLength certainUpTo,
            @Nullable ShownLength possibleUpTo) {

        private static LargestHoleAnswer of(LargestHole largest, LengthUnit unit) {
            return new LargestHoleAnswer(
                    shown(largest.certainFrom(), unit, Flattery.LOWER_LIMIT),
                    shown(largest.certainUpTo(), unit, Flattery.UPPER_LIMIT),
                    shown(largest.possibleUpTo(), unit, Flattery.UPPER_LIMIT));
        }

        private static @Nullable ShownLength shown(Optional<Length> limit, LengthUnit unit, Flattery side) {
            return limit.map(length -> ShownLength.of(length, unit, side)).orElse(null);
        }
    }

    static BranchAnswer of(Branch branch, LocalDate on, Stencils stencils) {
        LengthUnit unit = stencils.unit();
        Optional<Job> job = branch.job();
        return new BranchAnswer(
                branch.rung().way().label(),
                branch.rung().row().map(SizeAnswer::of).orElse(null),
                branch.rung().certainty().label(),
                EstimateSentence.of(branch, unit),
                branch.rung().open(),
                branch.largestHole()
                        .map(largest -> LargestHoleAnswer.of(largest, unit))
                        .orElse(null),
                job.flatMap(Job::kit).map(kit -> stencils.brief(kit, on)).orElse(null),
                job.map(all -> OperationsAnswer.of(all.work(), stencils)).orElse(null),
                job.flatMap(Job::total).map(ShownMoney::of).orElse(null),
                job.map(all -> OperationsAnswer.ready(all, on)).orElse(null),
                branch.left().orElse(null));
    }
}
