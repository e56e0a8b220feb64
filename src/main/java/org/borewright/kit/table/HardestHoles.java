package org.borewright.kit.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.fit.Certainty;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.measure.Length;

/**
 * The holes that drag all others to a larger size than these need, and what that costs: one engine goes to one size, as hard as its
 * hardest hole asks. Source: common practice.
 *
 * @param cylinders the holes that need the size
 * @param alone what the others could go to without them
 * @param losses what each of the others gives for it
 * @param rebuildsLost those that the engine loses by it; empty where it is not known what its walls bear
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
        List<Integer> hardest = new ArrayList<>();
        List<Integer> dragged = new ArrayList<>();
        for (int i = 0; i < serving.holes().size(); i++) {
            (needs(smaller, i) ? hardest : dragged).add(i);
        }
        return dragged.isEmpty()
                ? Optional.empty()
                : smaller.stream()
                        .filter(row -> dragged.stream().allMatch(hole -> isCertain(row, hole)))
                        .findFirst()
                        .map(row -> of(serving, row, hardest, dragged));
    }

    private static HardestHoles of(SizeRow serving, SizeRow alone, List<Integer> hardest, List<Integer> dragged) {
        return new HardestHoles(
                hardest.stream()
                        .map(hole -> serving.holes().get(hole).cylinder())
                        .toList(),
                alone,
                dragged.stream()
                        .map(hole ->
                                loss(serving.holes().get(hole), alone.holes().get(hole)))
                        .toList(),
                alone.left().flatMap(most -> serving.left().map(most::less)));
    }

    private static Loss loss(HoleAtSize there, HoleAtSize alone) {
        return new Loss(there.cylinder(), there.finish().minus(alone.finish()));
    }

    /** Whether the readings that may prove a smaller size are all of these holes. */
    public boolean isSpared(Settling settling) {
        return settling.readings().stream().allMatch(reading -> cylinders.contains(reading.cylinder()));
    }

    private static boolean needs(List<SizeRow> smaller, int hole) {
        for (SizeRow row : smaller) {
            if (isCertain(row, hole)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isCertain(SizeRow row, int hole) {
        return row.holes().get(hole).certainty() == Certainty.CERTAIN;
    }
}
