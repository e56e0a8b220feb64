package org.borewright.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.NotMeasured;

/**
 * Rules on finished holes: one size whose clearance windows hold them all, nearest to target. Holes that differ are held, with their groups
 * and the size that brings them together. Beside a hole that nobody measured the size of the others is named, and held.
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
        holds.addAll(queries);
        Hold.where(Hold.Reason.NOT_MEASURED, holes, FinishedRuling::isNotMeasured)
                .ifPresent(holds::add);
        if (!queries.isEmpty() || holes.stream().allMatch(FinishedRuling::isNotMeasured)) {
            return Ruling.without(Verdict.HOLD, holds);
        }
        Optional<SizeRow> wanted =
                asked.flatMap(size -> nearest(row -> row.size().equals(size) && row.serves())
                        .or(() -> SizeRow.bestAt(size, table))
                        .or(() -> besideNotMeasured(size)));
        if (asked.isPresent() && wanted.isEmpty()) {
            holds.add(Hold.of(Hold.Reason.ASKED_SIZE_DOES_NOT_SERVE));
        }
        return wanted.map(row -> asked(row, holds)).orElseGet(() -> ruleUnasked(holds));
    }

    /** A size that was asked for, beside a smaller one that would hold them. */
    private Ruling asked(SizeRow wanted, List<Hold> holds) {
        Ruling ruling = Ruling.on(wanted, holds);
        return nearest(SizeRow::serves)
                .filter(row -> row.size().compareTo(wanted.size()) < 0)
                .map(ruling::where)
                .orElse(ruling);
    }

    /** A size that was asked for, of which nothing is open but a hole that nobody measured. */
    private Optional<SizeRow> besideNotMeasured(Size size) {
        return table.stream()
                .filter(row -> row.size().equals(size) && row.mightServe())
                .filter(row -> ofMeasured(row) == Certainty.CERTAIN)
                .min(ofOneSize());
    }

    /** The certainty of the least certain hole that was measured. */
    private Certainty ofMeasured(SizeRow row) {
        return IntStream.range(0, holes.size())
                .filter(i -> !isNotMeasured(holes.get(i)))
                .mapToObj(i -> row.holes().get(i).certainty())
                .reduce(Certainty.CERTAIN, Certainty::and);
    }

    private static boolean isNotMeasured(Hole hole) {
        return hole.at20() instanceof NotMeasured;
    }

    /** The size that holds all of them as they are, though it may want parts; else what they must be cut to. */
    private Ruling ruleUnasked(List<Hold> holds) {
        return nearest(SizeRow::serves)
                .or(() -> nearest(SizeRow::mightServe))
                .or(() -> nearest(row -> row.wantsParts(Certainty.CERTAIN)))
                .or(() -> nearest(row -> row.wantsParts(Certainty.POSSIBLE)))
                .map(row -> Ruling.on(row, all(holds, all(poorIn(row), Hold.onBlocks(row)))))
                .or(() -> bringTogether(table).map(row -> Ruling.without(Verdict.HOLD, all(holds, apart(row)))))
                .or(() -> SizeRow.smallestPossible(table)
                        .map(row -> Ruling.without(Verdict.NO_CERTAIN_SIZE, all(holds, unread(row)))))
                .orElseGet(() -> Ruling.without(Verdict.NO_COMMON_SIZE, all(holds, List.of(noCommonSize()))));
    }

    /** The poor surfaces of holes that are left as they are at a size. */
    private List<Hold> poorIn(SizeRow row) {
        List<Hole> left = IntStream.range(0, holes.size())
                .filter(i -> row.holes().get(i).runsAsItIs())
                .mapToObj(holes::get)
                .toList();
        return Hold.where(Hold.Reason.FINISH_POOR, left, hole -> hole.survey().has(Finding.Weight.HONE)).stream()
                .toList();
    }

    private static List<Hold> all(List<Hold> before, List<Hold> after) {
        return Stream.of(before, after).flatMap(List::stream).toList();
    }

    /** Why the holes must be cut to a size, what keeps a smaller one from bringing them together, and what stands against it. */
    private List<Hold> apart(SizeRow together) {
        List<String> cut = toCut(together);
        Hold why = Hold.where(
                        Hold.Reason.FINDING_TO_CUT,
                        holes,
                        hole -> cut.contains(hole.name()) && hole.survey().has(Finding.Weight.MACHINABLE))
                .orElseGet(() -> Hold.in(apart(), cut));
        List<Hold> holds = new ArrayList<>(List.of(why));
        SizeRow.smallestPossible(table)
                .filter(row -> row.size().compareTo(together.size()) < 0)
                .ifPresent(row -> {
                    holds.addAll(poorIn(row));
                    Hold.onClearances(row.running(holes)).ifPresent(holds::add);
                });
        return all(holds, Hold.onBlocks(together));
    }

    /** Whether some hole has a size already and others another, or all lie between two. */
    private Hold.Reason apart() {
        return table.stream()
                        .anyMatch(row -> row.isBorne() && row.holes().stream().anyMatch(HoleAtSize::runsAsItIs))
                ? Hold.Reason.HOLES_DIFFER
                : Hold.Reason.BETWEEN_SIZES;
    }

    /** What keeps the smallest possible size from being certain, and what stands against it. */
    private List<Hold> unread(SizeRow possible) {
        List<String> open = possible.holes().stream()
                .filter(fate -> fate.certainty() == Certainty.POSSIBLE)
                .map(HoleAtSize::cylinder)
                .toList();
        List<Hold> holds = new ArrayList<>();
        Hold.where(Hold.Reason.DEPTH_NOT_MEASURED, holes, hole -> hole.survey().hasUnknownDepth())
                .ifPresent(holds::add);
        holds.addAll(poorIn(possible));
        Hold.onClearances(possible.running(holes)).ifPresent(holds::add);
        List<String> cut = toCut(possible);
        Hold.where(Hold.Reason.BETWEEN_SIZES, holes, hole -> !isNotMeasured(hole) && cut.contains(hole.name()))
                .filter(apart -> holes.stream().anyMatch(FinishedRuling::isNotMeasured))
                .ifPresent(holds::add);
        Predicate<Hole> named =
                hole -> holds.stream().anyMatch(hold -> hold.cylinders().contains(hole.name()));
        Hold.where(
                        Hold.Reason.READING_TOO_CLOSE,
                        holes,
                        hole -> open.contains(hole.name())
                                && !isNotMeasured(hole)
                                && !hole.survey().has(Finding.Weight.HOLD)
                                && !named.test(hole))
                .ifPresent(holds::add);
        return all(holds, Hold.onBlocks(possible));
    }

    /** Sleeving comes last: where the metal bears no size that all holes could be brought to. */
    private Hold noCommonSize() {
        Optional<Hold> neverCut = table.stream().allMatch(SizeRow::isAsItIs)
                ? Hold.where(Hold.Reason.NEVER_CUT, holes, this::hasNoSize)
                : Optional.empty();
        return neverCut.orElseGet(() -> Hold.in(Hold.Reason.NO_COMMON_SIZE, largest()));
    }

    private boolean hasNoSize(Hole hole) {
        return table.stream()
                .filter(SizeRow::isBorne)
                .flatMap(row -> row.holes().stream())
                .noneMatch(fate -> fate.cylinder().equals(hole.name()) && fate.runsAsItIs());
    }

    private static List<String> toCut(SizeRow together) {
        return together.holes().stream()
                .filter(hole -> !hole.runsAsItIs())
                .map(HoleAtSize::cylinder)
                .toList();
    }

    /** The largest hole; of several alike each. */
    private List<String> largest() {
        Length most = holes.stream().flatMap(hole -> diameter(hole).stream()).reduce(Length.ZERO, Length::max);
        return holes.stream()
                .filter(hole -> diameter(hole).equals(Optional.of(most)))
                .map(Hole::name)
                .toList();
    }

    private static Optional<Length> diameter(Hole hole) {
        return hole.diameters().map(Limits::greatest);
    }

    /**
     * The smallest size to which every hole either belongs or can be cut, never below the largest hole: one with nothing against it, else one
     * that wants only parts.
     */
    static Optional<SizeRow> bringTogether(List<SizeRow> table) {
        return table.stream()
                .filter(SizeRow::serves)
                .findFirst()
                .or(() -> table.stream()
                        .filter(row -> row.wantsParts(Certainty.CERTAIN))
                        .findFirst());
    }

    /**
     * Of the size that holds all as they are and whose worst hole lies nearest to target; on a tie the larger clearance, which is the smaller
     * piston. The shelf decides nothing but whose pistons of that size they are.
     */
    private Optional<SizeRow> nearest(Predicate<SizeRow> fitting) {
        List<SizeRow> holding =
                table.stream().filter(SizeRow::isAsItIs).filter(fitting).toList();
        return holding.stream()
                .min(Comparator.comparing(this::ofMeasured).thenComparing(nearestFirst()))
                .flatMap(nearest -> holding.stream()
                        .filter(row -> row.size().equals(nearest.size()))
                        .min(ofOneSize()));
    }

    /** Of two makers' pistons those that leave the least doubt, then those whose kit can be completed. */
    private Comparator<SizeRow> ofOneSize() {
        return Comparator.comparing(this::ofMeasured)
                .thenComparing(row -> row.kit().filter(Kit::isComplete).isEmpty())
                .thenComparing(nearestFirst());
    }

    private Comparator<SizeRow> nearestFirst() {
        return Comparator.comparing(this::worstOffTarget)
                .thenComparing(row -> row.choice().orElseThrow().finish());
    }

    private Length worstOffTarget(SizeRow row) {
        return IntStream.range(0, holes.size())
                .filter(i -> !isNotMeasured(holes.get(i)))
                .mapToObj(i ->
                        FinishedHoles.offTarget(holes.get(i), row.holes().get(i).piston()))
                .reduce(Length.ZERO, Length::max);
    }
}
