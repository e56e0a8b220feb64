package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;
import org.borewright.fit.Rule;
import org.borewright.measure.Length;

/**
 * One maker's pistons at one size with all that goes with them, worked out before any hole is measured.
 *
 * @param size the size
 * @param design the pistons' design
 * @param pistons for each hole in the engine's order, the pistons that may go in, smallest first: one, or the grades of a size
 * @param outfits the rings, pins and clips that fit
 * @param gaskets every set of gaskets of the engine over these pistons, the deck as made, the preferred first
 * @param metalChecks spigot and bridges at the largest finish, and the worst spread of masses that its pistons can come to
 * @param blocks why the size is not offered, whatever the wear; wall as made and gaskets apart
 * @param wallAsMade the wall of sleeve or barrel as made, at the largest finish; empty where the engine states none
 */
public record Choice(
        Size size,
        PistonDesign design,
        List<List<Piston>> pistons,
        List<Outfit> outfits,
        List<GasketFit> gaskets,
        List<Check> metalChecks,
        List<Block> blocks,
        Optional<Check> wallAsMade) {

    /** All that stands against the size before a hole is measured: the wall as made, the deck as it is, the present size standard. */
    public List<Block> blocksAsMade(Engine engine) {
        return blocksAsMade(engine, gaskets);
    }

    /** The same with the gaskets over a deck as it will be. */
    public List<Block> blocksAsMade(Engine engine, List<GasketFit> overPistons) {
        boolean cut =
                !engine.build().construction().mayBeBored() && size.oversize().isMoreThan(Length.ZERO);
        return allBlocks(engine, cut, wallAsMade.stream().toList(), overPistons, Length.ZERO);
    }

    /**
     * All that stands against the size, the wear apart.
     *
     * @param neverBored whether the work would cut a wall that is never bored
     * @param walls the wall left around each hole, where it could be checked
     * @param overPistons every set of gaskets over the pistons, the deck as it will be, the preferred first
     * @param skimmedBefore what earlier skims took off the deck together
     */
    public List<Block> allBlocks(
            Engine engine, boolean neverBored, List<Check> walls, List<GasketFit> overPistons, Length skimmedBefore) {
        List<Block> all = new ArrayList<>(blocks);
        if (neverBored) {
            all.add(Block.of(Block.Reason.NEVER_BORED));
        }
        Block.ofWalls(walls).ifPresent(all::add);
        if (GasketFit.fitting(overPistons).isEmpty()) {
            all.add(GasketFit.block(engine, overPistons, skimmedBefore));
        }
        return all;
    }

    /** The checks of the metal, the spread of masses with the pistons that were chosen of it, one for each hole. */
    public List<Check> metalChecksWith(Engine engine, List<Piston> chosen) {
        if (pistons.stream().allMatch(hole -> hole.size() == 1)) {
            return metalChecks;
        }
        Check spread =
                MetalChecks.massSpread(engine, chosen.stream().map(List::of).toList());
        return metalChecks.stream()
                .map(check -> check.rule() == Rule.MASS_SPREAD ? spread : check)
                .toList();
    }

    /** The ring sets that go with its pistons, each once. */
    public List<RingSet> ringSets() {
        return outfits.stream().map(Outfit::rings).distinct().toList();
    }

    /** Every piston that may go into one of the holes, each once. */
    public List<Piston> everyPiston() {
        return distinct(pistons);
    }

    static List<Piston> distinct(List<List<Piston>> byHole) {
        return byHole.stream().flatMap(List::stream).distinct().toList();
    }

    /** The largest of all its pistons: what wall and bridge must bear. */
    public Piston largest() {
        Piston largest = pistons.get(0).get(0);
        for (List<Piston> hole : pistons) {
            Piston candidate = hole.get(hole.size() - 1);
            largest = finish(candidate).isMoreThan(finish(largest)) ? candidate : largest;
        }
        return largest;
    }

    /** The piston that may run in the largest hole. */
    static Piston largestOf(List<Piston> pistons) {
        return pistons.stream().max(Comparator.comparing(Choice::finish)).orElseThrow();
    }

    /** The hole its smallest piston needs at target clearance. */
    public Length finish() {
        Length smallest = pistons.get(0).get(0).shape().finishForCleanUp();
        for (List<Piston> hole : pistons) {
            smallest = smallest.min(hole.get(0).shape().finishForCleanUp());
        }
        return smallest;
    }

    private static Length finish(Piston piston) {
        return piston.shape().largestFinish();
    }
}
