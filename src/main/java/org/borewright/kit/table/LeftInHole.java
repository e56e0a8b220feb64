package org.borewright.kit.table;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.request.Condition;

/**
 * How often one hole can be rebuilt at the most, as it was measured: what its size alone would leave, less the sizes that its wear has
 * eaten already.
 */
public final class LeftInHole {

    private static final RebuildsLeft NONE = new RebuildsLeft(0, 0);

    private LeftInHole() {}

    /**
     * The rebuilds left in a hole; empty where nobody knows its size, a finished hole is of none, or the wall must be surveyed to know. A
     * worn hole goes to the smallest size that may clean it, and that is the first of them; where a hone at the present size may do, it
     * takes none.
     *
     * @param table every size, rising
     * @param cylinder the hole
     * @param present size; of worn holes alone
     */
    public static Optional<RebuildsLeft> of(
            List<SizeRow> table, String cylinder, Optional<Size> present, Condition condition) {
        Predicate<SizeRow> mayBe = row -> certainty(row, cylinder) != Certainty.NO;
        return condition == Condition.FINISHED
                ? table.stream().filter(mayBe).findFirst().flatMap(SizeRow::left)
                : present.flatMap(size -> worn(
                        table.stream()
                                .filter(row -> row.size().oversize().compareTo(size.oversize()) >= 0)
                                .toList(),
                        mayBe));
    }

    private static Optional<RebuildsLeft> worn(List<SizeRow> from, Predicate<SizeRow> mayBe) {
        Optional<SizeRow> first = from.stream().filter(mayBe).findFirst();
        if (first.isEmpty()) {
            return Optional.of(NONE);
        }
        List<SizeRow> eaten = from.stream()
                .takeWhile(row -> !row.size().equals(first.get().size()))
                .toList();
        return (eaten.isEmpty() ? first.get() : eaten.get(eaten.size() - 1)).left();
    }

    /** Of a size without pistons only that of the hardest hole is known. */
    private static Certainty certainty(SizeRow row, String cylinder) {
        return row.holes().stream()
                .filter(hole -> hole.cylinder().equals(cylinder))
                .findFirst()
                .map(hole -> hole.certainty())
                .orElse(row.certainty());
    }
}
