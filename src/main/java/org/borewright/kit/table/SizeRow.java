package org.borewright.kit.table;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.kit.bill.Kit;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.Block;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.GasketFit;
import org.borewright.kit.choice.RebuildsLeft;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.PistonInHole;
import org.borewright.kit.hole.Work;

/**
 * One row of the table of sizes: one maker's pistons at one size, or a size without pistons.
 *
 * @param size the size
 * @param choice the pistons; empty where none was ever made
 * @param certainty whether it cleans its least certain hole; without pistons at the least new hole of the size, and no for finished holes
 * @param holes what becomes of each hole, in the engine's order; empty without pistons
 * @param walls the wall left around each hole; empty where the engine states no least wall
 * @param left the rebuilds left after it; empty where it is not known whether the wall bears them
 * @param blocks why it is not offered for another reason than the wear
 * @param gaskets every set of gaskets over its pistons, the preferred first; empty without pistons
 * @param gasket the set that goes with it: that of the kit, else the preferred one whether it fits or not; empty where there is none
 * @param kit parts, price and dates; empty when there is nothing to assemble
 */
public record SizeRow(
        Size size,
        Optional<Choice> choice,
        Certainty certainty,
        List<HoleAtSize> holes,
        List<Check> walls,
        Optional<RebuildsLeft> left,
        List<Block> blocks,
        List<GasketFit> gaskets,
        Optional<GasketFit> gasket,
        Optional<Kit> kit) {

    /** Copies the lists. */
    public SizeRow {
        holes = List.copyOf(holes);
        walls = List.copyOf(walls);
        blocks = List.copyOf(blocks);
    }

    /** A size for which no piston was ever made. */
    static SizeRow neverMade(
            Size size, Certainty certainty, List<Check> walls, Optional<RebuildsLeft> left, List<Block> blocks) {
        return new SizeRow(
                size,
                Optional.empty(),
                certainty,
                List.of(),
                walls,
                left,
                blocks,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    /** Whether nothing but the wear stands against it. */
    public boolean isOpen() {
        return blocks.isEmpty();
    }

    /** Whether nothing stands against it that stays whatever parts are found and however little is skimmed. */
    public boolean isBorne() {
        return blocks.stream().noneMatch(block -> block.reason().stays());
    }

    /** Whether it has so much hope, and nothing stands against it but that no piston was ever made for it. */
    public boolean wantsPistons(Certainty hope) {
        return !isOpen()
                && certainty == hope
                && blocks.stream().allMatch(block -> block.reason() == Block.Reason.NEVER_MADE);
    }

    /** Whether it has so much hope, and only parts, gasket or deck stand against it. */
    public boolean wantsParts(Certainty hope) {
        return !isOpen() && isBorne() && certainty() == hope;
    }

    /** Whether the engine may go to it: certain in every hole and nothing against it. */
    public boolean serves() {
        return isOpen() && certainty() == Certainty.CERTAIN;
    }

    /** Whether the engine might go to it, if a reading proves it. */
    public boolean mightServe() {
        return isOpen() && certainty() == Certainty.POSSIBLE;
    }

    /** Whether nothing is cut from any hole. */
    public boolean isAsItIs() {
        return holes.stream().allMatch(hole -> hole.work() == Work.AS_IS);
    }

    /** The pistons in the holes that are left as they are and were measured. */
    public List<PistonInHole> running(List<Hole> all) {
        return IntStream.range(0, holes.size())
                .filter(i -> holes.get(i).runsAsItIs() && all.get(i).diameters().isPresent())
                .mapToObj(i -> new PistonInHole(all.get(i), holes.get(i).piston()))
                .toList();
    }

    /** The smallest size that is possible at the best, one with nothing but the wear against it first; empty when there is none. */
    public static Optional<SizeRow> smallestPossible(List<SizeRow> table) {
        return table.stream()
                .filter(row -> row.mightServe() || row.wantsParts(Certainty.POSSIBLE))
                .min(Comparator.comparing((SizeRow row) -> !row.isOpen()).thenComparing(SizeRow::size));
    }

    /**
     * The row of a size that serves, of two makers' pistons the one whose kit can be completed, then the one that takes out less metal: the
     * shelf decides the day, not the hole; then the one with the better kit, for what serves has one. Empty when none of the size serves.
     */
    public static Optional<SizeRow> bestAt(Size size, List<SizeRow> table) {
        return table.stream()
                .filter(row -> row.size().equals(size) && row.serves())
                .min(Comparator.comparing((SizeRow row) ->
                                row.kit().filter(Kit::isComplete).isEmpty())
                        .thenComparing(row -> row.choice().orElseThrow().finish())
                        .thenComparing(row -> row.kit().orElseThrow(), KitFinder.PREFERENCE));
    }
}
