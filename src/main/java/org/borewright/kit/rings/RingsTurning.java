package org.borewright.kit.rings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.ReadingLimit;
import org.borewright.kit.hole.Rereading;
import org.borewright.kit.hole.TurningPoint;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.NewRings;
import org.borewright.measure.Length;

/**
 * Finds the readings that would change whether new rings alone will do, each hole by itself, the others as they are: the largest diameter
 * above which that is no longer certain, or down to which it would be. Each diameter is asked of every condition that the reading will meet.
 */
public final class RingsTurning {

    private static final Length NEXT = Length.ofNanometres(1);

    private final FitTable fits;
    private final List<Hole> holes;
    private final RingsOnly now;
    private final Choice choice;
    private final NewRings bought;
    private final Conditions conditions;
    private final Rereading rereading;

    private RingsTurning(FitTable fits, MatchRequest request, List<Hole> holes, RingsOnly now, Choice choice) {
        this.fits = fits;
        this.holes = holes;
        this.now = now;
        this.choice = choice;
        this.bought = request.rings();
        this.conditions = new Conditions(fits, request, Optional.of(choice.design()), Optional.of(choice));
        this.rereading = new Rereading(
                fits.shelf().engine().bore(),
                request.measuring(),
                request.present().reliable().map(fits::smallestHole));
    }

    /** Hole by hole; none where rings only is ruled out, or something else than one reading keeps it from being certain. */
    public static List<TurningPoint> around(RingsOnly now, FitTable fits, MatchRequest request, List<Hole> holes) {
        return RingsOnly.present(fits, request)
                .filter(choice -> now.certainty() != Certainty.NO && Check.allPass(now.deck()))
                .map(choice -> new RingsTurning(fits, request, holes, now, choice).points())
                .orElse(List.of());
    }

    private List<TurningPoint> points() {
        List<TurningPoint> points = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            if (holes.get(i).diameters().isPresent()) {
                (now.certainty() == Certainty.CERTAIN ? above(i) : atMost(i)).ifPresent(points::add);
            }
        }
        return points;
    }

    private Optional<TurningPoint> above(int hole) {
        Length beyond = fits.plausible().greatest().plus(NEXT);
        Length last = Rereading.lastPassing(largest(hole), beyond, isCertain(hole));
        return Optional.of(last)
                .filter(limit -> limit.plus(NEXT).isLessThan(beyond))
                .map(limit -> point(hole, TurningPoint.Side.ABOVE, limit, certainty(hole, limit.plus(NEXT))));
    }

    /** From the size when new, which no diameter of the hole lies below. */
    private Optional<TurningPoint> atMost(int hole) {
        Predicate<Length> isCertain = isCertain(hole);
        return holes.get(hole)
                .whenNew()
                .map(known -> rereading.asRead(known.diameter()))
                .filter(isCertain)
                .map(least -> Rereading.lastPassing(least, largest(hole), isCertain))
                .map(limit -> point(hole, TurningPoint.Side.AT_MOST, limit, Certainty.CERTAIN));
    }

    private TurningPoint point(int hole, TurningPoint.Side side, Length limit, Certainty then) {
        return new TurningPoint(
                holes.get(hole).name(), ReadingLimit.Read.LARGEST_DIAMETER, side, limit, new TurningPoint.Runs(then));
    }

    private Length largest(int hole) {
        return holes.get(hole).survey().asRead().largest().orElseThrow();
    }

    /** With a set of rings that all other holes are certain for. */
    private Predicate<Length> isCertain(int hole) {
        List<RingSet> goodForOthers = rings().filter(rings -> IntStream.range(0, holes.size())
                        .allMatch(i -> i == hole || certainty(i, holes.get(i), rings) == Certainty.CERTAIN))
                .toList();
        return largest -> goodForOthers.stream()
                .anyMatch(rings -> certainty(hole, reread(hole, largest), rings) == Certainty.CERTAIN);
    }

    /** Of the engine, its largest diameter in one hole being so large, with the rings that suit best then. */
    private Certainty certainty(int hole, Length largest) {
        return rings().map(rings -> IntStream.range(0, holes.size())
                        .mapToObj(i -> certainty(i, i == hole ? reread(hole, largest) : holes.get(i), rings))
                        .reduce(Certainty.CERTAIN, Certainty::and))
                .min(Certainty::compareTo)
                .orElse(Certainty.POSSIBLE);
    }

    private Stream<RingSet> rings() {
        return choice.ringSets().stream().filter(bought::mayBe);
    }

    private Hole reread(int hole, Length largest) {
        return rereading.of(
                holes.get(hole), ReadingLimit.withLargest(holes.get(hole).survey(), largest));
    }

    private Certainty certainty(int index, Hole hole, RingSet rings) {
        return conditions.of(index, hole, Optional.of(rings)).certainty();
    }
}
