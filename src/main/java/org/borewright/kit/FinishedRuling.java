package org.borewright.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;

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
    Ruling rule(Optional<Size> asked) {
        List<Hold> holds = new ArrayList<>(Hold.toPutRight(holes));
        List<Hold> queries = Hold.onQueries(holes);
        if (!queries.isEmpty()) {
            holds.addAll(queries);
            return Ruling.without(Verdict.HOLD, holds);
        }
        Optional<SizeRow> wanted = asked.flatMap(size -> SizeRow.bestAt(size, table));
        if (asked.isPresent() && wanted.isEmpty()) {
            holds.add(Hold.of(Hold.Reason.ASKED_SIZE_DOES_NOT_SERVE));
        }
        return wanted.map(row -> Ruling.on(row, holds)).orElseGet(() -> ruleUnasked(holds));
    }

    private Ruling ruleUnasked(List<Hold> holds) {
        return nearest(row -> asItIs(row) && row.serves())
                .or(() -> nearest(row -> asItIs(row) && row.mightServe()))
                .map(row -> Ruling.on(row, holds))
                .orElseGet(() -> differ(holds));
    }

    private Ruling differ(List<Hold> before) {
        Optional<SizeRow> together = bringTogether(table);
        List<Hold> holds = new ArrayList<>(before);
        holds.add(together.map(row -> Hold.in(apart(), toCut(row)))
                .orElseGet(() -> Hold.in(Hold.Reason.NO_COMMON_SIZE, largest())));
        return Ruling.without(together.isPresent() ? Verdict.HOLD : Verdict.NO_COMMON_SIZE, holds);
    }

    /** Whether some hole has a size already and others another, or all lie between two. */
    private Hold.Reason apart() {
        return table.stream()
                        .anyMatch(row -> row.isOpen() && row.holes().stream().anyMatch(HoleAtSize::runsAsItIs))
                ? Hold.Reason.HOLES_DIFFER
                : Hold.Reason.BETWEEN_SIZES;
    }

    private static List<String> toCut(SizeRow together) {
        return together.holes().stream()
                .filter(hole -> !hole.runsAsItIs())
                .map(HoleAtSize::cylinder)
                .toList();
    }

    /** The largest hole; of several alike each. */
    private List<String> largest() {
        Length most = holes.stream().map(FinishedRuling::diameter).reduce(Length.ZERO, Length::max);
        return holes.stream()
                .filter(hole -> diameter(hole).equals(most))
                .map(Hole::name)
                .toList();
    }

    private static Length diameter(Hole hole) {
        return hole.diameters().orElseThrow().greatest();
    }

    /** The smallest size to which every hole either belongs or can be honed: never below the largest hole. */
    static Optional<SizeRow> bringTogether(List<SizeRow> table) {
        return table.stream()
                .filter(row -> row.isOpen() && row.certainty() == Certainty.CERTAIN)
                .findFirst();
    }

    private static boolean asItIs(SizeRow row) {
        return !row.has(Work.HONE_ONLY) && !row.has(Work.REBORE);
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
