package org.borewright.kit.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Piston;
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
    private final List<SizeRow> open;

    /** For worn holes and the table of their sizes. */
    public TurningPoints(BoreSpec bore, MatchRequest request, List<Hole> holes, List<SizeRow> table) {
        this.bore = bore;
        this.request = request;
        this.holes = holes;
        this.open = open(table, request.present().reliable());
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
        Optional<ReadingLimit> most = Optional.empty();
        for (SizeRow row : open) {
            if (row.serves() && row.size().equals(serving)) {
                most = larger(most, limit(row, hole));
            }
        }
        return most.map(limit -> point(hole, limit, TurningPoint.Side.ABOVE, next(serving, hole, limit)));
    }

    /** The next size that serves with the reading just above a limit. */
    private Optional<Size> next(Size serving, int hole, ReadingLimit limit) {
        for (SizeRow row : open) {
            if (row.serves() && row.size().compareTo(serving) > 0 && bearsMore(row, hole, limit)) {
                return Optional.of(row.size());
            }
        }
        return Optional.empty();
    }

    private boolean bearsMore(SizeRow row, int hole, ReadingLimit than) {
        Optional<ReadingLimit> limit = limit(row, hole);
        return limit.isPresent() && limit.get().at20().isMoreThan(than.at20());
    }

    private Optional<TurningPoint> below(Optional<Size> serving, int hole) {
        Optional<TurningPoint> most = Optional.empty();
        for (SizeRow row : open) {
            boolean smaller = serving.isEmpty() || row.size().compareTo(serving.get()) < 0;
            if (smaller && isAloneInTheWay(row, hole)) {
                Optional<TurningPoint> point = limit(row, hole)
                        .filter(limit -> couldBeRead(limit, holes.get(hole)))
                        .map(limit -> point(hole, limit, TurningPoint.Side.AT_MOST, Optional.of(row.size())));
                most = point.isPresent() && (most.isEmpty() || isNoLess(point.get(), most.get())) ? point : most;
            }
        }
        return most;
    }

    private static boolean isNoLess(TurningPoint one, TurningPoint other) {
        return !one.limit().isLessThan(other.limit());
    }

    private TurningPoint point(int hole, ReadingLimit limit, TurningPoint.Side side, Optional<Size> then) {
        return new TurningPoint(holes.get(hole).name(), limit.read(), side, limit.asRead(request, bore), then);
    }

    /** The rows that nothing but the wear stands against, none below what the holes are now. */
    private static List<SizeRow> open(List<SizeRow> table, Optional<Size> now) {
        return table.stream()
                .filter(SizeRow::isOpen)
                .filter(row -> now.isEmpty() || row.size().compareTo(now.get()) >= 0)
                .toList();
    }

    private static boolean isAloneInTheWay(SizeRow row, int hole) {
        for (int i = 0; i < row.holes().size(); i++) {
            boolean certain = row.holes().get(i).certainty() == Certainty.CERTAIN;
            if (certain == (i == hole)) {
                return false;
            }
        }
        return true;
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
        Optional<ReadingLimit> most = Optional.empty();
        for (Piston piston : row.choice().orElseThrow().pistons().get(hole)) {
            most = larger(most, limit(row, hole, piston.shape().finishForCleanUp()));
        }
        return most;
    }

    /** The one that bears more; of equal ones the later. */
    private static Optional<ReadingLimit> larger(Optional<ReadingLimit> one, Optional<ReadingLimit> other) {
        boolean stays = other.isEmpty()
                || (one.isPresent() && other.get().at20().isLessThan(one.get().at20()));
        return stays ? one : other;
    }

    private Optional<ReadingLimit> limit(SizeRow row, int hole, Length finish) {
        return switch (row.holes().get(hole).work()) {
            case REBORE -> ReadingLimit.byBar(holes.get(hole), finish, request, bore);
            case HONE_ONLY -> ReadingLimit.byHone(holes.get(hole), finish, request, bore);
            case AS_IS -> Optional.empty();
        };
    }
}
