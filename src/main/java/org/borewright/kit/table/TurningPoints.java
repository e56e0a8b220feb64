package org.borewright.kit.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleCleanUp;
import org.borewright.kit.hole.ReadingLimit;
import org.borewright.kit.hole.WhenNew;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;

/** Finds the readings that would change the size of worn holes: each hole by itself, the others as they are. */
public final class TurningPoints {

    private final BoreSpec bore;
    private final MatchRequest request;
    private final List<Hole> holes;
    private final List<SizeRow> table;

    /** For worn holes and the table of their sizes. */
    public TurningPoints(BoreSpec bore, MatchRequest request, List<Hole> holes, List<SizeRow> table) {
        this.bore = bore;
        this.request = request;
        this.holes = holes;
        this.table = table;
    }

    /**
     * Hole by hole what would take the engine beyond the size that serves, and what would bring a smaller one.
     *
     * @param serving the smallest size that serves; empty where none does
     */
    public List<TurningPoint> around(Optional<Size> serving) {
        List<TurningPoint> points = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            int hole = i;
            serving.flatMap(size -> above(size, hole)).ifPresent(points::add);
            below(serving, hole).ifPresent(points::add);
        }
        return List.copyOf(points);
    }

    private Optional<TurningPoint> above(Size serving, int hole) {
        return open().filter(row -> row.serves() && row.size().equals(serving))
                .flatMap(row -> limit(row, hole).stream())
                .max(Comparator.comparing(ReadingLimit::at20))
                .map(limit -> point(hole, limit, TurningPoint.Side.ABOVE, next(serving, hole, limit)));
    }

    /** The next size that serves with the reading just above a limit. */
    private Optional<Size> next(Size serving, int hole, ReadingLimit limit) {
        return open().filter(row -> row.serves() && row.size().compareTo(serving) > 0)
                .filter(row -> limit(row, hole)
                        .filter(larger -> larger.at20().isMoreThan(limit.at20()))
                        .isPresent())
                .map(SizeRow::size)
                .findFirst();
    }

    private Optional<TurningPoint> below(Optional<Size> serving, int hole) {
        return open().filter(row ->
                        serving.map(size -> row.size().compareTo(size) < 0).orElse(true))
                .filter(row -> isAloneInTheWay(row, hole))
                .flatMap(row -> limit(row, hole).stream()
                        .filter(limit -> couldBeRead(limit, holes.get(hole)))
                        .map(limit -> point(hole, limit, TurningPoint.Side.AT_MOST, Optional.of(row.size()))))
                .max(Comparator.comparing(TurningPoint::limit));
    }

    private TurningPoint point(int hole, ReadingLimit limit, TurningPoint.Side side, Optional<Size> then) {
        return new TurningPoint(holes.get(hole).name(), limit.read(), side, limit.asRead(request, bore), then);
    }

    private Stream<SizeRow> open() {
        return table.stream()
                .filter(SizeRow::isOpen)
                .filter(row -> request.present()
                        .reliable()
                        .filter(now -> row.size().compareTo(now) < 0)
                        .isEmpty());
    }

    private static boolean isAloneInTheWay(SizeRow row, int hole) {
        return IntStream.range(0, row.holes().size())
                .allMatch(i -> i == hole ^ row.holes().get(i).certainty() == Certainty.CERTAIN);
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

    /** The largest reading of a hole that is certain in a row: with several grades, of the one that bears most. */
    private Optional<ReadingLimit> limit(SizeRow row, int hole) {
        return row.choice().orElseThrow().pistons().get(hole).stream()
                .map(piston -> piston.shape().finishForCleanUp())
                .flatMap(finish -> limit(row, hole, finish).stream())
                .max(Comparator.comparing(ReadingLimit::at20));
    }

    private Optional<ReadingLimit> limit(SizeRow row, int hole, Length finish) {
        return switch (row.holes().get(hole).work()) {
            case REBORE -> ReadingLimit.byBar(holes.get(hole), finish, request, bore);
            case HONE_ONLY -> ReadingLimit.byHone(holes.get(hole), finish, request, bore);
            case AS_IS -> Optional.empty();
        };
    }
}
