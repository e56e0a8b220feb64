package org.borewright.kit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.borewright.fit.Certainty;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Finding;

/**
 * Rules on finished holes: one size whose clearance windows hold them all, nearest to target. Holes that differ are held, with their groups
 * and the size that brings them together.
 */
final class FinishedRuling {

    private final List<Hole> holes;
    private final List<SizeRow> table;

    FinishedRuling(List<Hole> holes, List<SizeRow> table) {
        this.holes = holes;
        this.table = table;
    }

    /** The ruling, before the checks of the size it names are asked. */
    Ruling rule() {
        List<String> lost = holes.stream()
                .filter(hole -> hole.survey().has(Finding.Weight.BEYOND_MACHINING))
                .map(Hole::name)
                .toList();
        if (!lost.isEmpty()) {
            return Ruling.without(Verdict.REFER, List.of(Hold.in(Hold.Reason.BEYOND_MACHINING, lost)));
        }
        return nearest(row -> asItIs(row) && row.serves())
                .or(() -> nearest(row -> asItIs(row) && row.mightServe()))
                .map(row -> Ruling.on(row, List.of()))
                .orElseGet(this::differ);
    }

    private Ruling differ() {
        return bringTogether(table).isPresent()
                ? Ruling.without(Verdict.HOLD, List.of(Hold.of(Hold.Reason.HOLES_DIFFER)))
                : Ruling.without(Verdict.NO_COMMON_SIZE, List.of(Hold.of(Hold.Reason.NO_COMMON_SIZE)));
    }

    /** The smallest size to which every hole either belongs or can be honed: never below the largest hole. */
    static Optional<SizeRow> bringTogether(List<SizeRow> table) {
        return table.stream()
                .filter(row -> row.isOpen() && row.certainty() == Certainty.CERTAIN)
                .findFirst();
    }

    private static boolean asItIs(SizeRow row) {
        return !row.has(Work.HONE_ONLY);
    }

    /** The row whose worst hole lies nearest to target; on a tie the larger clearance, which is the smaller piston. */
    private Optional<SizeRow> nearest(Predicate<SizeRow> fitting) {
        return table.stream()
                .filter(fitting)
                .min(Comparator.comparing(this::worstOffTarget)
                        .thenComparing(row -> row.choice().orElseThrow().finish()));
    }

    private Length worstOffTarget(SizeRow row) {
        return IntStream.range(0, holes.size())
                .mapToObj(i ->
                        FinishedHoles.offTarget(holes.get(i), row.holes().get(i).piston()))
                .reduce(Length.ZERO, Length::max);
    }
}
