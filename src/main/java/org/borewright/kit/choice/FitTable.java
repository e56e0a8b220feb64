package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Engine;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;
import org.borewright.fit.CommonPractice;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * What fits an engine at each of its sizes, worked out once per catalogue revision: everything that needs no reading, no price and no
 * stock.
 *
 * @param shelf the shelf it was worked out from
 * @param choices for each size of the shelf every maker's pistons, rising by finish; none where none was made
 * @param ranking how sets of gaskets are preferred
 * @param left for each size the rebuilds left after it, no hole sleeved before; left out where the wall must be surveyed to know
 * @param torques how every group of fasteners is tightened, in the order of the shelf
 */
public record FitTable(
        Shelf shelf,
        Map<Size, List<Choice>> choices,
        GasketRanking ranking,
        Map<Size, RebuildsLeft> left,
        List<TorqueReminder> torques) {

    /** Works the table out. */
    public static FitTable of(Shelf shelf) {
        GasketRanking ranking = GasketRanking.of(shelf);
        Map<Size, List<Choice>> choices = new LinkedHashMap<>();
        for (Size size : shelf.sizes()) {
            choices.put(size, choices(shelf, ranking, size));
        }
        return new FitTable(
                shelf,
                Collections.unmodifiableMap(choices),
                ranking,
                RebuildsLeft.of(shelf, choices, finish -> MetalChecks.wallsUnsurveyed(shelf.engine(), finish)),
                shelf.fasteners().stream().map(TorqueReminder::of).toList());
    }

    private static List<Choice> choices(Shelf shelf, GasketRanking ranking, Size size) {
        return shelf.parts().designs().stream()
                .flatMap(design -> ChoiceFinder.find(shelf, ranking, size, design).stream())
                .sorted(Comparator.comparing(Choice::finish)
                        .thenComparing(choice -> choice.design().code()))
                .toList();
    }

    /** Every set of gaskets over the pistons of a choice, all skims together taking so much off the deck, the preferred first. */
    public List<GasketFit> gaskets(Choice choice, Length skims) {
        if (skims.equals(Length.ZERO)) {
            return choice.gaskets();
        }
        return ranking.ranked(choice.gaskets().stream()
                .map(fit -> GasketFit.skimmed(shelf.engine(), fit.gaskets(), choice.everyPiston(), skims))
                .toList());
    }

    /** What stands against a choice whatever the holes, its gaskets over the deck as all skims together leave it. */
    public List<Block> blocks(Choice choice, Length skims) {
        return choice.blocksAsMade(shelf.engine(), gaskets(choice, skims));
    }

    /** The same table where the pistons of one size are these and no others. */
    public FitTable with(Choice pistons) {
        Map<Size, List<Choice>> others = new LinkedHashMap<>(choices);
        others.put(pistons.size(), List.of(pistons));
        return new FitTable(shelf, Collections.unmodifiableMap(others), ranking, left, torques);
    }

    /** The same for somebody who has these numbers already: worked out anew only where one of them is supplied no longer. */
    public FitTable having(Set<PartNumber> numbers) {
        return numbers.stream().allMatch(number -> Supply.isSupplied(shelf, number)) ? this : of(shelf.having(numbers));
    }

    /** The choices of one size, rising by finish. */
    public List<Choice> at(Size size) {
        return choices.getOrDefault(size, List.of());
    }

    /** A design's pistons of one size; empty where it has none for some hole. */
    public Optional<Choice> at(Size size, PistonDesign design) {
        return at(size).stream()
                .filter(choice -> choice.design().equals(design))
                .findFirst();
    }

    /** The rebuilds left after a size of the shelf; empty where the wall must be surveyed to know. */
    public Optional<RebuildsLeft> leftAfter(Size size) {
        return Optional.ofNullable(left.get(size));
    }

    /** What stands against a size for which no piston was ever made, the wall as made. */
    public List<Block> neverMade(Size size) {
        return neverMade(
                size,
                MetalChecks.wallAsMade(shelf.engine(), finishWithoutPistons(size)).stream()
                        .toList());
    }

    /**
     * What stands against a size for which no piston was ever made.
     *
     * @param walls the wall left around each hole, where it could be checked
     */
    public List<Block> neverMade(Size size, List<Check> walls) {
        Engine engine = shelf.engine();
        List<Block> blocks = new ArrayList<>(
                ChoiceFinder.ofSize(engine, size, MetalChecks.ofEveryHole(engine, finishWithoutPistons(size))));
        Block.ofWalls(walls).ifPresent(blocks::add);
        blocks.add(Block.of(Block.Reason.NEVER_MADE));
        return blocks;
    }

    /** The largest hole of a size for which no piston was ever made: the largest new hole of it. */
    public Length finishWithoutPistons(Size size) {
        return shelf.engine().newBore(size).greatest();
    }

    /** The readings that are believed: from a little below a new hole to a little above the largest allowed finish (common practice). */
    public Limits plausible() {
        BoreSpec bore = shelf.engine().bore();
        Length largestFinish = choices.values().stream()
                .flatMap(List::stream)
                .filter(choice -> !choice.size().oversize().isMoreThan(bore.largestOversize()))
                .map(choice -> choice.largest().shape().largestFinish())
                .reduce(bore.asNew().greatest().plus(bore.largestOversize()), Length::max);
        return new Limits(
                bore.asNew().least().minus(CommonPractice.believedBelow()),
                largestFinish.plus(CommonPractice.believedAbove()));
    }

    /**
     * The smallest hole a size can have had: the engine's own at standard, else its smallest piston at least clearance, be it supplied or
     * not: who was bored for one of before has its hole still.
     */
    public Length smallestHole(Size size) {
        Length asNew = shelf.engine().newBore(size).least();
        if (size.oversize().equals(Length.ZERO)) {
            return asNew;
        }
        return shelf.madeIn(size)
                .map(piston -> piston.shape().smallestFinish())
                .min(Length::compareTo)
                .orElse(asNew);
    }
}
