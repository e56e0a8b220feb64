package org.borewright.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.kit.table.HardestHoles;
import org.borewright.kit.table.SizeRow;
import org.borewright.kit.table.SizeTable;
import org.borewright.measure.survey.NotMeasured;

/**
 * Rules on worn holes: the smallest size that is certain for every one of them, and every one goes to it. The size never depends on the
 * shelf: out of stock means the same size on a later day.
 */
final class WornRuling {

    private final List<Hole> holes;
    private final SizeTable sizes;
    private final List<SizeRow> table;

    WornRuling(List<Hole> holes, SizeTable sizes, List<SizeRow> table) {
        this.holes = holes;
        this.sizes = sizes;
        this.table = table;
    }

    /** The ruling, before the checks of the size it names are asked. */
    Ruling rule(Optional<Size> asked) {
        return smallest().map(size -> rule(size, asked)).orElseGet(this::noneCertain);
    }

    /** The best row of the smallest size that serves. */
    private Optional<SizeRow> smallest() {
        return table.stream()
                .filter(SizeRow::serves)
                .map(SizeRow::size)
                .min(Comparator.naturalOrder())
                .flatMap(size -> SizeRow.bestAt(size, table));
    }

    private Ruling rule(SizeRow smallest, Optional<Size> asked) {
        Optional<Size> larger = asked.filter(size -> size.compareTo(smallest.size()) > 0);
        Optional<SizeRow> wanted = larger.flatMap(size -> SizeRow.bestAt(size, table));
        boolean refused = (larger.isPresent() && wanted.isEmpty())
                || asked.filter(size -> size.compareTo(smallest.size()) < 0).isPresent();
        return wanted.map(row -> Ruling.on(row, List.of()).where(smallest))
                .orElseGet(() -> Ruling.on(
                        smallest, refused ? List.of(Hold.of(Hold.Reason.ASKED_SIZE_DOES_NOT_SERVE)) : List.of()));
    }

    private Ruling noneCertain() {
        Optional<SizeRow> wanting = wanting(Certainty.CERTAIN);
        if (table.stream().noneMatch(SizeRow::mightServe)) {
            return wanting.or(() -> neverMade(Certainty.CERTAIN))
                    .map(row -> Ruling.on(row, Hold.onBlocks(row)))
                    .or(() -> wanting(Certainty.POSSIBLE).map(row -> nonePossible(Hold.onBlocks(row))))
                    .or(() -> neverMade(Certainty.POSSIBLE)
                            .map(row -> nonePossible(List.of(Hold.of(Hold.Reason.POSSIBLE_NEVER_MADE)))))
                    .orElseGet(this::noneLeft);
        }
        List<Hold> holds = unread();
        wanting.ifPresent(row -> holds.addAll(Hold.onBlocks(row)));
        return Ruling.without(Verdict.NO_CERTAIN_SIZE, holds);
    }

    /** Of sizes that are possible at the best, and all of them blocked, the block comes first: no reading settles it. */
    private Ruling nonePossible(List<Hold> blocks) {
        List<Hold> holds = new ArrayList<>(blocks);
        holds.addAll(unread());
        return Ruling.without(Verdict.NO_CERTAIN_SIZE, holds);
    }

    /** No size is called the last while a hole is in question. */
    private Ruling noneLeft() {
        List<Hold> queries = Hold.onQueries(holes);
        Hold.Reason reason = table.stream().anyMatch(row -> row.choice().isPresent())
                        && table.stream().allMatch(SizeRow::isAsItIs)
                ? Hold.Reason.NEVER_CUT
                : Hold.Reason.NO_SIZE_LEFT;
        return queries.isEmpty()
                ? Ruling.without(Verdict.NO_COMMON_SIZE, List.of(Hold.in(reason, HardestHoles.excluded(table))))
                : Ruling.without(Verdict.HOLD, queries);
    }

    private Optional<SizeRow> wanting(Certainty hope) {
        return table.stream().filter(row -> row.wantsParts(hope)).findFirst();
    }

    private Optional<SizeRow> neverMade(Certainty hope) {
        return table.stream().filter(row -> row.wantsPistons(hope)).findFirst();
    }

    /** The readings that are wanting. */
    private List<Hold> unread() {
        List<Hold> holds = new ArrayList<>(Hold.onQueries(holes));
        holds.addAll(Hold.toPutRight(holes.stream().filter(this::isInTheWay).toList()));
        add(holds, Hold.Reason.NOT_MEASURED, hole -> hole.at20() instanceof NotMeasured);
        add(holds, Hold.Reason.DEPTH_NOT_MEASURED, hole -> hole.survey().hasUnknownDepth());
        add(holds, Hold.Reason.SIZE_WHEN_NEW_NOT_KNOWN, hole -> wouldBeBored(hole) && lacksSizeWhenNew(hole));
        Predicate<Hole> unnamed =
                hole -> holds.stream().noneMatch(hold -> hold.cylinders().contains(hole.name()));
        add(
                holds,
                Hold.Reason.WALL_NOT_PROBED,
                unnamed.and(this::wouldBeBored)
                        .and(hole -> !hole.isProbed() && !clearsAtWorst(hole) && mayBeProvenByProbe(hole)));
        SizeRow.smallestPossible(table)
                .flatMap(row -> Hold.onClearances(row.running(holes)))
                .ifPresent(holds::add);
        add(holds, Hold.Reason.READING_TOO_CLOSE, unnamed);
        if (holds.isEmpty()) {
            holds.add(Hold.of(Hold.Reason.CHECK_OPEN));
        }
        return holds;
    }

    private static boolean lacksSizeWhenNew(Hole hole) {
        return !(hole.at20() instanceof NotMeasured) && hole.whenNew().isEmpty() && !hole.isProbed();
    }

    /** At a size that it is not certain for: then not the wall but the gauge keeps it from being certain there. */
    private boolean clearsAtWorst(Hole hole) {
        return possible(hole).anyMatch(fate -> sizes.clearsAtWorst(hole, fate));
    }

    /** Where the diameter alone comes too near the bar no probe proves it, but first a better gauge. */
    private boolean mayBeProvenByProbe(Hole hole) {
        return possible(hole).findAny().isEmpty()
                || possible(hole).anyMatch(fate -> sizes.mayBeProvenByProbe(hole, fate));
    }

    private Stream<HoleAtSize> possible(Hole hole) {
        return table.stream()
                .filter(SizeRow::mightServe)
                .flatMap(row -> fate(row, hole).stream())
                .filter(fate -> fate.certainty() == Certainty.POSSIBLE);
    }

    private void add(List<Hold> holds, Hold.Reason reason, Predicate<Hole> concerned) {
        Hold.where(reason, holes, concerned.and(this::isInTheWay)).ifPresent(holds::add);
    }

    /** Whether the hole keeps the smallest possible size from being certain: the others would gain nothing by another reading. */
    private boolean isInTheWay(Hole hole) {
        return hoped().map(row -> fate(row, hole)
                        .map(HoleAtSize::certainty)
                        .orElseGet(() -> sizes.withoutPistons(row.size(), hole)))
                .filter(certainty -> certainty != Certainty.CERTAIN)
                .isPresent();
    }

    /** Where no piston was made nothing but the bar is asked. */
    private boolean wouldBeBored(Hole hole) {
        return hoped().filter(row -> fate(row, hole)
                        .filter(fate -> fate.work() != Work.REBORE)
                        .isEmpty())
                .isPresent();
    }

    /** The smallest possible size, one that was never made only where no other is; empty when none is possible. */
    private Optional<SizeRow> hoped() {
        return SizeRow.smallestPossible(table).or(() -> neverMade(Certainty.POSSIBLE));
    }

    /** What becomes of the hole at a size; empty where no piston was made for it. */
    private static Optional<HoleAtSize> fate(SizeRow row, Hole hole) {
        return row.holes().stream()
                .filter(fate -> fate.cylinder().equals(hole.name()))
                .findFirst();
    }
}
