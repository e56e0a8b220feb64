package org.borewright.api.match.answer.size;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Construction;
import org.borewright.kit.Match;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.table.HardestHoles;
import org.borewright.kit.table.Settling;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The holes that drag the others to a larger size or to none, what that costs, and what would avoid or lessen it.
 *
 * @param cylinders the holes that need the size, or that none is certain for
 * @param othersAlone what the others could go to without them
 * @param losses what each of the others gives for it; none where no size is certain for all
 * @param rebuildsLost the rebuilds that the engine loses by it; absent where it is not known what the walls bear
 * @param wouldAvoid what would avoid it, or lessen it, and then to what size
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record HardestAnswer(
        List<String> cylinders,
        SizeAnswer othersAlone,
        List<LossAnswer> losses,
        @Nullable RebuildsLeft rebuildsLost,
        List<String> wouldAvoid) {

    /**
     * What one hole gives.
     *
     * @param cylinder the hole
     * @param metal on diameter, beyond what its own wear asks
     */
    public record LossAnswer(String cylinder, ShownLength metal) {}

    /** The hardest holes of a match in an engine built so; nothing where none drags the others. */
    public static @Nullable HardestAnswer of(Match match, Construction built, LengthUnit unit) {
        return match.hardest()
                .map(hardest -> of(hardest, match.settling(), built, unit))
                .orElse(null);
    }

    private static HardestAnswer of(
            HardestHoles hardest, Optional<Settling> settling, Construction built, LengthUnit unit) {
        return new HardestAnswer(
                hardest.cylinders(),
                SizeAnswer.of(hardest.alone()),
                hardest.losses().stream()
                        .map(loss -> new LossAnswer(loss.cylinder(), ShownLength.of(loss.metal(), unit)))
                        .toList(),
                hardest.rebuildsLost().orElse(null),
                ways(hardest, settling, built));
    }

    private static List<String> ways(HardestHoles hardest, Optional<Settling> settling, Construction built) {
        List<String> ways = new ArrayList<>();
        settling.filter(hardest::isLessened)
                .map(found -> "the readings that could save a step (couldSave)" + whatTheyDo(hardest, found))
                .ifPresent(ways::add);
        ways.add(built.renewal() + ", for " + hardest.inWords() + ", finished with the others to "
                + hardest.alone().size().label() + ": a specialist judges whether it can be had");
        return ways;
    }

    private static String whatTheyDo(HardestHoles hardest, Settling found) {
        String label = found.row().size().label();
        if (hardest.losses().isEmpty()) {
            return ": they may prove " + label + " for all";
        }
        return hardest.isSpared(found) ? "" : ": they lessen it, to " + label + ", and do not avoid it";
    }
}
