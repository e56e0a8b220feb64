package org.borewright.api.bench.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
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
record BenchHoldAnswer(
        String reason,
        String says,
        String next,
        List<String> cylinders,
        List<String> pistons,
        List<ShownCheck> checks,
        @Nullable List<HoldAnswer.QueryAnswer> queries) {

    static List<BenchHoldAnswer> of(List<BenchHold> holds, LengthUnit unit) {
        return holds.stream().map(hold -> of(hold, unit)).toList();
    }

    private static BenchHoldAnswer of(BenchHold hold, LengthUnit unit) {
        return new BenchHoldAnswer(
                hold.reason().label(),
                hold.says(),
                hold.reason().wayOut(),
                hold.cylinders(),
                hold.pistons(),
                hold.checks().stream().map(check -> ShownCheck.of(check, unit)).toList(),
                hold.queries().isEmpty()
                        ? null
                        : hold.queries().stream()
                                .map(query -> HoldAnswer.QueryAnswer.of(query, unit))
                                .toList());
    }
}
