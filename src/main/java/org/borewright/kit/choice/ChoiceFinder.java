package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Gaskets;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.Check;
import org.borewright.fit.Rule;
import org.borewright.measure.Length;

/** Finds one maker's pistons for one size of an engine, and all that can be checked of them before a hole is measured. */
final class ChoiceFinder {

    private ChoiceFinder() {}

    /** The choice; empty where the maker has no piston in this size for some hole. */
    static Optional<Choice> find(Shelf shelf, GasketRanking ranking, Size size, PistonDesign design) {
        List<Piston> made = shelf.parts().pistons().stream()
                .filter(piston ->
                        piston.design().equals(design.code()) && piston.size().equals(size.label()))
                .filter(piston -> Supply.isSupplied(shelf, piston.number()))
                .sorted(Comparator.comparing((Piston piston) -> piston.shape().finishForCleanUp())
                        .thenComparing(Piston::number))
                .toList();
        List<List<Piston>> byHole = shelf.engine().cylinders().stream()
                .map(hole -> made.stream()
                        .filter(piston -> piston.hand().goesInto(hole.hand()))
                        .toList())
                .toList();
        return byHole.stream().anyMatch(List::isEmpty)
                ? Optional.empty()
                : Optional.of(choice(shelf, ranking, size, design, byHole));
    }

    private static Choice choice(
            Shelf shelf, GasketRanking ranking, Size size, PistonDesign design, List<List<Piston>> byHole) {
        Engine engine = shelf.engine();
        List<Piston> pistons = Choice.distinct(byHole);
        Piston largest = Choice.largestOf(pistons);
        List<Outfit> outfits = OutfitFinder.find(shelf, pistons);
        List<GasketFit> gaskets = ranking.ranked(Gaskets.of(shelf.parts()).stream()
                .filter(set -> set.parts().allMatch(part -> Supply.isSupplied(shelf, part.number())))
                .map(set -> GasketFit.of(engine, set, pistons, Length.ZERO))
                .toList());
        List<Check> metal = MetalChecks.of(engine, byHole);
        Optional<Check> wallAsMade =
                MetalChecks.wallAsMade(engine, largest.shape().largestFinish());
        return new Choice(
                size,
                design,
                byHole,
                outfits.stream().filter(Outfit::fits).toList(),
                gaskets,
                metal,
                blocks(shelf, size, pistons, outfits, metal),
                wallAsMade);
    }

    private static List<Block> blocks(
            Shelf shelf, Size size, List<Piston> pistons, List<Outfit> outfits, List<Check> metal) {
        List<Block> blocks = new ArrayList<>(ofSize(shelf.engine(), size, metal));
        if (outfits.stream().noneMatch(Outfit::fits)) {
            List<Check> reasons = outfits.stream()
                    .flatMap(outfit -> Check.holding(outfit.checks()).stream())
                    .toList();
            List<Withdrawal> withdrawn = outfits.isEmpty() ? OutfitFinder.withdrawn(shelf, pistons.get(0)) : List.of();
            blocks.add(
                    withdrawn.isEmpty()
                            ? Block.of(Block.Reason.PARTS, reasons)
                            : new Block(Block.Reason.PARTS_WITHDRAWN, List.of(), withdrawn));
        }
        return List.copyOf(blocks);
    }

    /** What stands against a size whatever pistons are made for it, spigot and bridges at its finish among it. */
    static List<Block> ofSize(Engine engine, Size size, List<Check> metal) {
        List<Block> blocks = new ArrayList<>(ofSize(engine, size));
        List<Check> wall = failed(metal, Rule.SPIGOT_WALL);
        if (!wall.isEmpty()) {
            blocks.add(Block.of(Block.Reason.WALL, wall));
        }
        List<Check> bridge = failed(metal, Rule.BRIDGE);
        if (!bridge.isEmpty()) {
            blocks.add(Block.of(Block.Reason.BRIDGE, bridge));
        }
        return blocks;
    }

    /** What stands against a size whatever metal is left. */
    static List<Block> ofSize(Engine engine, Size size) {
        BoreSpec bore = engine.bore();
        List<Block> blocks = new ArrayList<>();
        if (size.furtherWork()) {
            blocks.add(Block.of(Block.Reason.FURTHER_WORK));
        }
        if (size.oversize().isMoreThan(bore.largestOversize())) {
            blocks.add(Block.of(Block.Reason.BEYOND_LARGEST));
        }
        return blocks;
    }

    private static List<Check> failed(List<Check> checks, Rule rule) {
        return Check.holding(checks).stream()
                .filter(check -> check.rule() == rule)
                .toList();
    }
}
