package org.borewright.kit.table;

import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.borewright.fit.Certainty;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.measure.Length;

/**
 * The holes that drag all others to a larger size than these need, and what that costs: one engine goes to one size, as hard as its
 * hardest hole asks. Where no size is certain for a hole it drags them to none. Source: common practice.
 *
 * @param cylinders the holes that need the size, or that none is certain for
 * @param alone what the others could go to without them
 * @param losses what each of the others gives for it; none where no size is certain for all
 * @param rebuildsLost those that the engine loses by it; empty where it is not known what its walls bear, or no size is certain for all
 */
public record HardestHoles(
        List<String> cylinders, SizeRow alone, List<Loss> losses, Optional<RebuildsLeft> rebuildsLost) {

    /**
     * What one hole gives.
     *
     * @param cylinder the hole
     * @param metal on diameter, beyond what its own wear asks
     */
    public record Loss(String cylinder, Length metal) {}

    /** Copies the lists. */
    public HardestHoles {
        cylinders = List.copyOf(cylinders);
        losses = List.copyOf(losses);
    }

    /** Those of a table whose smallest size that serves is this one; empty where every hole needs it. */
    public static Optional<HardestHoles> of(List<SizeRow> table, SizeRow serving) {
        List<SizeRow> smaller = table.stream()
                .filter(row -> row.isOpen() && row.size().compareTo(serving.size()) < 0)
                .toList();
        List<Integer> hardest = holes(serving, hole -> needs(smaller, hole));
        List<Integer> dragged = holes(serving, hole -> !needs(smaller, hole));
        return dragged.isEmpty()
                ? Optional.empty()
                : smallestCertain(smaller, dragged)
                        .map(row -> new HardestHoles(
                                names(serving, hardest),
                                row,
                                dragged.stream()
                                        .map(hole -> loss(serving, smaller, hole))
                                        .toList(),
                                row.left().flatMap(most -> serving.left().map(most::less))));
    }

    /**
     * Those that leave the others without a certain size: none is certain for them, and at the smallest that is for all others they do not
     * come clean. Empty where every hole, or none, is such, or where a reading may show that they come clean there.
     */
    public static Optional<HardestHoles> beyond(List<SizeRow> table) {
        List<SizeRow> open = table.stream().filter(SizeRow::isOpen).toList();
        return open.stream().findFirst().flatMap(any -> {
            List<Integer> lost = holes(any, hole -> needs(open, hole));
            List<Integer> others = holes(any, hole -> !needs(open, hole));
            return lost.isEmpty() || others.isEmpty()
                    ? Optional.empty()
                    : smallestCertain(open, others)
                            .filter(row -> lost.stream()
                                    .allMatch(hole -> row.holes().get(hole).certainty() == Certainty.NO))
                            .map(row -> new HardestHoles(names(row, lost), row, List.of(), Optional.empty()));
        });
    }

    /** The holes that nothing made and allowed brings clean; none where something else than the wear stands against every size. */
    public static List<String> excluded(List<SizeRow> table) {
        List<SizeRow> open = table.stream().filter(SizeRow::isOpen).toList();
        return open.stream()
                .limit(1)
                .flatMap(row -> row.holes().stream())
                .map(HoleAtSize::cylinder)
                .filter(cylinder -> open.stream()
                        .flatMap(row -> row.holes().stream())
                        .filter(hole -> hole.cylinder().equals(cylinder))
                        .allMatch(hole -> hole.certainty() == Certainty.NO))
                .toList();
    }

    /** Against the smallest size that it is certain for itself. */
    private static Loss loss(SizeRow serving, List<SizeRow> smaller, int hole) {
        HoleAtSize there = serving.holes().get(hole);
        Length alone = smaller.stream()
                .filter(row -> isCertain(row, hole))
                .map(row -> row.holes().get(hole).finish())
                .findFirst()
                .orElseThrow();
        return new Loss(there.cylinder(), there.finish().minus(alone));
    }

    /** The holes in a sentence. */
    public String inWords() {
        return Hole.inWords(cylinders);
    }

    /** Whether the readings that may prove a smaller size are all of these holes, so that the others give less for them. */
    public boolean isLessened(Settling settling) {
        return settling.readings().stream().allMatch(reading -> cylinders.contains(reading.cylinder()));
    }

    /** Whether they may prove the very size that the others could go to alone. */
    public boolean isSpared(Settling settling) {
        return isLessened(settling) && settling.row().size().compareTo(alone.size()) <= 0;
    }

    private static List<String> names(SizeRow row, List<Integer> holes) {
        return holes.stream().map(hole -> row.holes().get(hole).cylinder()).toList();
    }

    /** The places of those holes of a row. */
    private static List<Integer> holes(SizeRow any, IntPredicate which) {
        return IntStream.range(0, any.holes().size()).filter(which).boxed().toList();
    }

    private static boolean needs(List<SizeRow> sizes, int hole) {
        return sizes.stream().noneMatch(row -> isCertain(row, hole));
    }

    private static Optional<SizeRow> smallestCertain(List<SizeRow> sizes, List<Integer> holes) {
        return sizes.stream()
                .filter(row -> holes.stream().allMatch(hole -> isCertain(row, hole)))
                .findFirst();
    }

    private static boolean isCertain(SizeRow row, int hole) {
        return row.holes().get(hole).certainty() == Certainty.CERTAIN;
    }
}
