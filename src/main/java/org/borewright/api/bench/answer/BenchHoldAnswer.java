package org.borewright.api.bench.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.borewright.api.match.answer.HoldAnswer;
import org.borewright.api.shown.ShownCheck;
import org.borewright.kit.bench.BenchHold;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * Something that stands in the way on the bench, and the way out.
 *
 * @param reason why, in a few words
 * @param says what holds and where, in one sentence
 * @param next the way out
 * @param cylinders the holes it concerns
 * @param pistons the tags of the pistons it concerns
 * @param checks the checks it stands on, each with its place
 * @param queries what is asked about the readings of its one cylinder; absent where nothing is
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BenchHoldAnswer(
        String reason,
        String says,
        String next,
        List<String> cylinders,
        List<String> pistons,
        List<ShownCheck> checks,
        @Nullable List<HoldAnswer.QueryAnswer> queries) {

    /** Their own way out leads to the checks, whose ways out are told instead. */
    private static final Set<BenchHold.Reason> TOLD_BY_CHECKS =
            EnumSet.of(BenchHold.Reason.CHECK_OUT, BenchHold.Reason.CHECK_UNKNOWN, BenchHold.Reason.CHECK_OPEN);

    /** Their own way out leaves a figure to the checks, which is told after it. */
    private static final Set<BenchHold.Reason> COMPLETED_BY_CHECKS =
            EnumSet.of(BenchHold.Reason.SIZE_BLOCKED, BenchHold.Reason.TARGET_NOT_PROVEN);

    static List<BenchHoldAnswer> of(List<BenchHold> holds, LengthUnit unit) {
        return holds.stream().map(hold -> of(hold, unit)).toList();
    }

    private static BenchHoldAnswer of(BenchHold hold, LengthUnit unit) {
        return new BenchHoldAnswer(
                hold.reason().label(),
                hold.says(),
                next(hold, unit),
                hold.cylinders(),
                hold.pistons(),
                hold.checks().stream().map(check -> ShownCheck.of(check, unit)).toList(),
                hold.queries().isEmpty()
                        ? null
                        : hold.queries().stream()
                                .map(query -> HoldAnswer.QueryAnswer.of(query, unit))
                                .toList());
    }

    /** The way out of a hold, which needs no check to be looked up. */
    public static String next(BenchHold hold, LengthUnit unit) {
        String own = hold.reason().wayOut();
        if (hold.reason() == BenchHold.Reason.PISTON_OPEN) {
            return own + " " + ShownCheck.waysOutByPlace(hold.checks(), unit);
        }
        Optional<String> ways = ShownCheck.waysOut(hold.checks(), unit);
        if (TOLD_BY_CHECKS.contains(hold.reason())) {
            return ways.orElse(own);
        }
        return COMPLETED_BY_CHECKS.contains(hold.reason())
                ? own + ways.map(told -> " " + told).orElse("")
                : own;
    }
}
