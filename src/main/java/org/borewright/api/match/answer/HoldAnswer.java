package org.borewright.api.match.answer;

import java.util.List;
import org.borewright.api.shown.ShownCheck;
import org.borewright.kit.Hold;
import org.borewright.measure.LengthUnit;

/**
 * Something that holds, and the way out.
 *
 * @param reason why, in a few words
 * @param says what holds and where, in one sentence
 * @param next the way out
 * @param cylinders the holes it concerns; empty for the engine
 * @param checks the checks it stands on, each with its place
 */
public record HoldAnswer(String reason, String says, String next, List<String> cylinders, List<ShownCheck> checks) {

    static HoldAnswer of(Hold hold, LengthUnit unit) {
        return new HoldAnswer(
                hold.reason().label(),
                hold.says(),
                hold.reason().wayOut(),
                hold.cylinders(),
                hold.checks().stream().map(check -> ShownCheck.of(check, unit)).toList());
    }
}
