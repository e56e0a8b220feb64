package org.borewright.kit.choice;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.CommonPractice;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * What fits an engine at each of its sizes, worked out once per catalogue revision: everything that needs no reading, no price and no
 * stock.
 *
 * @param shelf the shelf it was worked out from
 * @param choices every maker's pistons at every size, rising by size and then by finish
 */
public record FitTable(Shelf shelf, List<Choice> choices) {

    /** Works the table out. */
    public static FitTable of(Shelf shelf) {
        List<Choice> choices = shelf.sizes().stream()
                .flatMap(size -> shelf.parts().designs().stream()
                        .flatMap(design -> ChoiceFinder.find(shelf, size, design).stream()))
                .sorted(Comparator.comparing(Choice::size)
                        .thenComparing(Choice::finish)
                        .thenComparing(choice -> choice.design().code()))
                .toList();
        return new FitTable(shelf, choices);
    }

    /** The choices of one size. */
    public List<Choice> at(Size size) {
        return choices.stream().filter(choice -> choice.size().equals(size)).toList();
    }

    /** What stands against a size for which no piston was ever made. */
    public List<Block> neverMade(Size size) {
        return Stream.concat(
                        ChoiceFinder.ofSize(shelf.engine(), size).stream(),
                        Stream.of(Block.of(Block.Reason.NEVER_MADE)))
                .toList();
    }

    /** The readings that are believed: from a little below a new hole to a little above the largest allowed finish (common practice). */
    public Limits plausible() {
        BoreSpec bore = shelf.engine().bore();
        Length largestFinish = choices.stream()
                .filter(choice -> !choice.size().oversize().isMoreThan(bore.largestOversize()))
                .map(choice -> choice.largest().shape().largestFinish())
                .reduce(bore.asNew().greatest().plus(bore.largestOversize()), Length::max);
        return new Limits(
                bore.asNew().least().minus(CommonPractice.believedBelow()),
                largestFinish.plus(CommonPractice.believedAbove()));
    }

    /** The smallest hole a size can have had: the engine's own at standard, else its smallest piston at least clearance. */
    public Length smallestHole(Size size) {
        Length asNew = shelf.engine().newBore(size).least();
        if (size.oversize().equals(Length.ZERO)) {
            return asNew;
        }
        return at(size).stream()
                .flatMap(choice -> choice.pistons().stream().flatMap(List::stream))
                .map((Piston piston) -> piston.shape().smallestFinish())
                .min(Length::compareTo)
                .orElse(asNew);
    }
}
