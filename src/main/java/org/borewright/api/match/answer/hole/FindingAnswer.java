package org.borewright.api.match.answer.hole;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.borewright.api.shown.ShownLength;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.survey.Finding;
import org.jspecify.annotations.Nullable;

/**
 * Something seen in or on a cylinder, and what it means for the work.
 *
 * @param kind what was seen
 * @param depth how deep it goes into the wall; absent where that was not measured
 * @param height how far below the deck; absent where that was not noted
 * @param means what it means
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record FindingAnswer(
        String kind, @Nullable ShownLength depth, @Nullable ShownLength height, String means) {

    /** All of a hole, in the order they were sent. */
    public static List<FindingAnswer> of(Hole hole, boolean mayBeCut, LengthUnit unit) {
        return hole.survey().findings().stream()
                .map(finding -> of(finding, mayBeCut, unit))
                .toList();
    }

    private static FindingAnswer of(Finding finding, boolean mayBeCut, LengthUnit unit) {
        return new FindingAnswer(
                finding.kind().label(),
                ShownLength.of(finding.depth(), unit),
                ShownLength.of(finding.height(), unit),
                finding.weightIn(mayBeCut).says());
    }
}
