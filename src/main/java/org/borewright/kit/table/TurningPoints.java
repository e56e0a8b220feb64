package org.borewright.kit.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleCleanUp;
import org.borewright.kit.hole.ReadingLimit;
import org.borewright.kit.hole.Rereading;
import org.borewright.kit.hole.TurningPoint;
import org.borewright.kit.hole.WhenNew;
import org.borewright.kit.hole.Work;
import org.borewright.kit.hole.WornHoles;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;

/**
 * Finds the readings that would change the size of worn holes: each hole by itself, the others as they are. How far a reading may move is
 * reckoned first, and its last nanometre told by the very rule that it will meet.
 */
public final class TurningPoints {

    private static final Length NEXT = Length.ofNanometres(1);

    /** How far what is reckoned may lie from what the rule says: a correction, an uncertainty counted twice and a half are rounded. */
    private static final int ROUNDED = 4;

    private final BoreSpec bore;
    private final MatchRequest request;
    private final List<Hole> holes;
    private final List<SizeRow> open;
    private final WornHoles worn;
    private final Rereading rereading;

    /** For worn holes and the table of their sizes. */
    public TurningPoints(FitTable fits, MatchRequest request, List<Hole> holes, List<SizeRow> table) {
        this.bore = fits.shelf().engine().bore();
        this.request = request;
        this.holes = holes;
        this.open = table.stream().filter(SizeRow::isOpen).toList();
        this.worn = new WornHoles(fits.shelf().engine(), request.present());
        this.rereading = new Rereading(
                bore, request.measuring(), request.present().reliable().map(fits::smallestHole));
    }

    /** Hole by hole what would take the engine beyond the smallest size that serves, and what would bring a smaller one. */
    public List<TurningPoint> around() {
        Optional<Size> serving =
                open.stream().filter(SizeRow::serves).map(SizeRow::size).findFirst();
        List<TurningPoint> points = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            int hole = i;
            serving.flatMap(size -> above(size, hole)).ifPresent(points::add);
            below(serving, hole).ifPresent(points::add);
        }
        return List.copyOf(points);
    }

    /** Of several pistons of the size the first beyond whose limit none of them serves. */
    private Optional<TurningPoint> above(Size serving, int hole) {
        return limits(hole, row -> row.size().equals(serving))
                .filter(last -> !last.asRead.isLessThan(now(hole, last)))
                .filter(last -> beyond(hole, last)
                        .filter(size -> size.compareTo(serving) <= 0)
                        .isEmpty())
                .min(Comparator.comparing(Last::asRead))
                .map(last -> point(hole, last, TurningPoint.Side.ABOVE, beyond(hole, last)));
    }

    private Optional<Size> beyond(int hole, Last last) {
        return serving(hole, reread(hole, last.limit, last.asRead.plus(NEXT)));
    }

    private Optional<TurningPoint> below(Optional<Size> serving, int hole) {
        return limits(
                        hole,
                        row -> (serving.isEmpty() || row.size().compareTo(serving.get()) < 0) && !isCertain(row, hole))
                .filter(last -> last.asRead.isLessThan(now(hole, last)) && couldBeRead(last.limit, holes.get(hole)))
                .max(Comparator.comparing(Last::asRead))
                .map(last -> point(
                        hole, last, TurningPoint.Side.AT_MOST, serving(hole, reread(hole, last.limit, last.asRead))));
    }

    private Length now(int hole, Last last) {
        return last.limit.now(holes.get(hole).survey());
    }

    private TurningPoint point(int hole, Last last, TurningPoint.Side side, Optional<Size> then) {
        return new TurningPoint(
                holes.get(hole).name(), last.limit.read(), side, last.asRead, new TurningPoint.Goes(then));
    }

    /** The smallest size that serves with one hole read otherwise; empty where none does. */
    private Optional<Size> serving(int hole, Hole reread) {
        return open.stream()
                .filter(row -> areOthersCertain(row, hole))
                .filter(row -> isCertain(row, reread, pistons(row, hole)))
                .map(SizeRow::size)
                .findFirst();
    }

    private static boolean areOthersCertain(SizeRow row, int hole) {
        return IntStream.range(0, row.holes().size()).allMatch(i -> i == hole || isCertain(row, i));
    }

    private static boolean isCertain(SizeRow row, int hole) {
        return row.holes().get(hole).certainty() == Certainty.CERTAIN;
    }

    private boolean isCertain(SizeRow row, Hole reread, List<Piston> pistons) {
        return worn.at(row.choice().orElseThrow(), reread, pistons).certainty() == Certainty.CERTAIN;
    }

    private static List<Piston> pistons(SizeRow row, int hole) {
        return row.choice().orElseThrow().pistons().get(hole);
    }

    /**
     * Whether a hole could read so little: no less than when it was new, no wall nearer than half the diameter. Where a defect or the
     * wall around it counts as well, the reading alone tells nothing.
     */
    private static boolean couldBeRead(ReadingLimit limit, Hole hole) {
        boolean alone = hole.survey().wall().least().isEmpty()
                && HoleCleanUp.deepest(hole.survey()).equals(Length.ZERO);
        Optional<Length> least = limit.read() == ReadingLimit.Read.PROBED_WALL
                ? hole.diameters().map(measured -> measured.greatest().halfRoundedUp())
                : hole.whenNew().map(WhenNew::diameter);
        return alone && least.filter(limit.at20()::isLessThan).isEmpty();
    }

    /**
     * How far a reading of a hole may go for one piston.
     *
     * @param limit as reckoned, and of which reading
     * @param asRead the last that the rule calls certain, as it would be read
     */
    private record Last(ReadingLimit limit, Length asRead) {}

    /** Of every piston of the rows that every other hole is certain in. */
    private Stream<Last> limits(int hole, Predicate<SizeRow> asked) {
        return open.stream()
                .filter(asked)
                .filter(row -> areOthersCertain(row, hole))
                .flatMap(row -> pistons(row, hole).stream().flatMap(piston -> last(row, hole, piston).stream()));
    }

    /** Empty as well where the rule does not turn where it was reckoned to: then no reading decides alone. */
    private Optional<Last> last(SizeRow row, int hole, Piston piston) {
        return limit(row.holes().get(hole).work(), holes.get(hole), piston.shape())
                .flatMap(limit -> {
                    Length reckoned = limit.asRead(request, bore);
                    return IntStream.rangeClosed(-ROUNDED, ROUNDED)
                            .mapToObj(off -> reckoned.minus(NEXT.times(off)))
                            .filter(read -> isCertain(row, reread(hole, limit, read), List.of(piston)))
                            .findFirst()
                            .filter(read -> read.isLessThan(reckoned.plus(NEXT.times(ROUNDED))))
                            .map(read -> new Last(limit, read));
                });
    }

    private Hole reread(int hole, ReadingLimit limit, Length read) {
        return rereading.of(holes.get(hole), limit.moved(holes.get(hole).survey(), read));
    }

    private Optional<ReadingLimit> limit(Work work, Hole hole, PistonShape piston) {
        return switch (work) {
            case REBORE -> ReadingLimit.byBar(hole, piston.finishForCleanUp(), request, bore);
            case HONE_ONLY -> ReadingLimit.byHone(hole, piston.finishForCleanUp(), request, bore);
            case AS_IS -> ReadingLimit.asItIs(hole, piston, request, bore);
        };
    }
}
