package org.borewright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.fit.CommonPractice;
import org.borewright.kit.hole.Hole;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * What the readings of a worn hole say against what is told of it: a hole does not grow smaller, so where even its largest diameter reads
 * smaller, proven, than it was before, either is wrong, and nothing is computed. Source: geometry.
 */
final class Contradiction {

    private Contradiction() {}

    /**
     * The holds of holes that contradict what is told of them, with the readings in question beside; empty where none does.
     *
     * @param presentLeast the smallest hole the present size can have had; empty where it is not known
     */
    static Optional<Ruling> in(List<Hole> holes, Optional<Length> presentLeast) {
        List<Hold> holds = new ArrayList<>(Stream.of(
                        presentLeast.flatMap(least -> Hold.where(
                                Hold.Reason.SMALLER_THAN_PRESENT_SIZE, holes, hole -> isOfSmallerSize(hole, least))),
                        Hold.where(Hold.Reason.SMALLER_THAN_WHEN_NEW, holes, Contradiction::isSmallerThanWhenNew))
                .flatMap(Optional::stream)
                .toList());
        if (holds.isEmpty()) {
            return Optional.empty();
        }
        holds.addAll(Hold.onQueries(holes));
        return Optional.of(Ruling.without(Verdict.HOLD, holds));
    }

    /** Though the present size was finished somewhat tight: a worn hole of the size below would otherwise pass for a fresh one of this. */
    private static boolean isOfSmallerSize(Hole hole, Length presentLeast) {
        return isBelow(
                hole.diameters().map(Limits::greatest), hole, presentLeast.minus(CommonPractice.finishedTighter()));
    }

    /** Than its finish on record, or than its wall where no ring runs, which the same gauge read. */
    private static boolean isSmallerThanWhenNew(Hole hole) {
        Optional<Length> finish = hole.survey().wall().lastFinish();
        Optional<Length> unworn = hole.survey().wall().unworn();
        return finish.filter(told -> isBelow(hole.diameters().map(Limits::greatest), hole, told))
                        .isPresent()
                || unworn.filter(told -> isBelow(hole.survey().asRead().largest(), hole, told))
                        .isPresent();
    }

    private static boolean isBelow(Optional<Length> largest, Hole hole, Length told) {
        return largest.filter(read -> read.plus(hole.uncertainty()).isLessThan(told))
                .isPresent();
    }
}
