package org.borewright.kit.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.borewright.catalog.BoreSpec;
import org.borewright.fit.Certainty;
import org.borewright.fit.CleanUp;
import org.borewright.fit.CleanUpCheck;
import org.borewright.fit.CloserReading.Better;
import org.borewright.fit.Comparison;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.borewright.measure.Temperature;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.QueriedGrid;
import org.borewright.measure.survey.Wall;

/**
 * The smallest size that is possible and not certain and that readings can prove, and those readings: one probed wall can save a step. A
 * reading that no gauge could show of the hole is not asked for. Source: geometry of the hole.
 *
 * @param row the possible size
 * @param readings for each hole in the way one, or several of which any may do
 */
public record Settling(SizeRow row, List<Reading> readings) {

    /** What to read. */
    public enum What {
        /** Nothing that is read before a finding is put right stands. */
        PUT_RIGHT_FIRST(Finding.Weight.HOLD.says()),
        /** The diameter itself. */
        MEASURE_HOLE("measure the hole"),
        /** The places that are queried. */
        READ_AGAIN("read the queried places again"),
        /** The depth of a finding. */
        MEASURE_DEPTH("measure the depth of the finding"),
        /** Where a finding lies: at a place worn less it takes less to cut out. */
        MEASURE_HEIGHT("measure at what height the finding lies: it settles the size at one of these below the deck"),
        /** How far the worn wall stands off the original axis, or off the bar's own. */
        PROBE_WALL("probe the wall: it settles the size if it lies within this of the axis"),
        /** How far the worn wall stands off the bar's own axis: from the original one no reading is small enough. */
        PROBE_FROM_BAR_AXIS("probe the wall from the bar's own axis: it settles the size if it lies within this of it"),
        /** The clearance in a hole that is left as it is. */
        MEASURE_PISTONS("measure the pistons and pair them: a measured piston takes the place of its tolerance"),
        /** A hole to be honed, or all wear on one wall, with a better gauge. */
        BETTER_GAUGE("measure again with a gauge of a smaller uncertainty"),
        /** The wall already probed, with something better. */
        BETTER_PROBE("probe the wall again with something of a smaller uncertainty");

        private final String label;

        What(String label) {
            this.label = label;
        }

        /** The words as shown. */
        public String label() {
            return label;
        }
    }

    /**
     * One reading that would settle a hole. The figures are radii as they would be read at the temperature of the request, less the
     * depth of what the bar must still cut out behind the wall.
     *
     * @param cylinder the hole
     * @param what to read
     * @param within how far the wall may stand off the original axis; empty where no wall of this hole can lie so near
     * @param withinFromBarAxis how far it may stand off the axis the bar itself will turn on, where nothing is lost to centring
     * @param heights the measured depths below the deck at which a finding may lie; empty where it is something else that is read
     * @param gauge the better one, where that is all that is wanting
     */
    public record Reading(
            String cylinder,
            What what,
            Optional<Length> within,
            Optional<Length> withinFromBarAxis,
            List<Length> heights,
            Optional<Better> gauge) {

        private static Reading of(Hole hole, What what) {
            return of(hole, what, List.of());
        }

        private static Reading of(Hole hole, What what, List<Length> heights) {
            return new Reading(hole.name(), what, Optional.empty(), Optional.empty(), heights, Optional.empty());
        }

        /** Empty where no gauge proves it: the value lies on its limit or beyond, where a better reading is more likely to exclude it. */
        private static Optional<Reading> proving(Comparison close, What again) {
            return close.closer()
                    .filter(closer -> close.margin() > 0)
                    .flatMap(closer -> closer instanceof Better better ? Optional.of(better) : Optional.empty())
                    .map(better -> new Reading(
                            close.place(), again, Optional.empty(), Optional.empty(), List.of(), Optional.of(better)));
        }
    }

    /** The smallest row below a limit that readings can prove, and those readings; empty when there is none. */
    public static Optional<Settling> of(
            BoreSpec bore, Temperature temperature, List<Hole> holes, List<SizeRow> table, Optional<SizeRow> named) {
        return table.stream()
                .filter(SizeRow::mightServe)
                .filter(row ->
                        named.map(size -> row.size().compareTo(size.size()) < 0).orElse(true))
                .flatMap(row -> at(bore, temperature, holes, row).stream())
                .findFirst();
    }

    /** The readings that can prove one row that is possible; empty when one hole is beyond the help of any. */
    public static Optional<Settling> at(BoreSpec bore, Temperature temperature, List<Hole> holes, SizeRow row) {
        return readings(bore, temperature, holes, row).map(readings -> new Settling(row, readings));
    }

    /** A reading for every hole in the way; empty when one of them is beyond the help of any. */
    private static Optional<List<Reading>> readings(
            BoreSpec bore, Temperature temperature, List<Hole> holes, SizeRow row) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            HoleAtSize fate = row.holes().get(i);
            if (fate.certainty() == Certainty.POSSIBLE) {
                List<Reading> ofHole = readings(bore, temperature, holes.get(i), fate);
                if (ofHole.isEmpty()) {
                    return Optional.empty();
                }
                readings.addAll(ofHole);
            }
        }
        return Optional.of(readings);
    }

    /**
     * Any of which will do. The height first, for it is the easier to measure; a wall that was not probed is probed, or its diameters read
     * better.
     */
    private static List<Reading> readings(BoreSpec bore, Temperature temperature, Hole hole, HoleAtSize fate) {
        return Stream.of(
                        height(bore, temperature, hole, fate),
                        reading(bore, temperature, hole, fate),
                        betterRead(bore, hole, fate))
                .flatMap(Optional::stream)
                .toList();
    }

    /** With a gauge that proves that even all wear on one wall is cut out; empty where the wall was probed, or no gauge does. */
    private static Optional<Reading> betterRead(BoreSpec bore, Hole hole, HoleAtSize fate) {
        return Optional.of(hole.cleanUp())
                .filter(cleanUp -> fate.work() == Work.REBORE && !hole.isProbed())
                .flatMap(CleanUp::worst)
                .flatMap(worst -> byBar(worst, bore, hole, fate));
    }

    private static Optional<Reading> byBar(Length needed, BoreSpec bore, Hole hole, HoleAtSize fate) {
        Length barSize = fate.finish().minus(bore.honeStock());
        return Reading.proving(
                CleanUpCheck.byBar(needed, barSize, hole.ofDeciding()).at(hole.name()),
                hole.isProbed() ? What.BETTER_PROBE : What.BETTER_GAUGE);
    }

    /** The heights at which what nobody noted the height of would not stand in the way; empty where there is none. */
    private static Optional<Reading> height(BoreSpec bore, Temperature temperature, Hole hole, HoleAtSize fate) {
        return hole.at20() instanceof Grid grid && fate.work() == Work.REBORE
                ? Optional.of(grid.depths().stream()
                                .filter(height -> hole.cleanUpAt(height, bore, temperature)
                                                .at(fate.finish(), bore.honeStock())
                                        == Certainty.CERTAIN)
                                .toList())
                        .filter(heights -> !heights.isEmpty())
                        .map(heights -> Reading.of(hole, What.MEASURE_HEIGHT, heights))
                : Optional.empty();
    }

    private static Optional<Reading> reading(BoreSpec bore, Temperature temperature, Hole hole, HoleAtSize fate) {
        Optional<Wall.Reach> probed = hole.probe();
        boolean honedFirst = fate.work() == Work.AS_IS && hole.survey().has(Finding.Weight.HONE);
        if (hole.survey().has(Finding.Weight.HOLD) || honedFirst) {
            return Optional.of(Reading.of(hole, What.PUT_RIGHT_FIRST));
        }
        if (hole.at20() instanceof NotMeasured && probed.isEmpty()) {
            return Optional.of(Reading.of(hole, What.MEASURE_HOLE));
        }
        if (hole.at20() instanceof QueriedGrid) {
            return Optional.of(Reading.of(hole, What.READ_AGAIN));
        }
        if (hole.survey().hasUnknownDepth()) {
            return Optional.of(Reading.of(hole, What.MEASURE_DEPTH));
        }
        if (fate.work() == Work.AS_IS) {
            return Optional.of(Reading.of(hole, What.MEASURE_PISTONS));
        }
        Length finish = fate.finish();
        if (fate.work() == Work.HONE_ONLY) {
            return hole.honeCleanUp()
                    .flatMap(needed -> Reading.proving(
                            CleanUpCheck.byHone(needed, finish, hole.ofReading())
                                    .at(hole.name()),
                            What.BETTER_GAUGE));
        }
        return probed.flatMap(reach -> hole.cleanUp().worst())
                .flatMap(needed -> byBar(needed, bore, hole, fate))
                .or(() -> probe(bore, temperature, hole, finish));
    }

    /** The probe that would settle a finish; empty when the wall cannot lie so near to any axis, or was probed from the bar's own. */
    private static Optional<Reading> probe(BoreSpec bore, Temperature temperature, Hole hole, Length finish) {
        Optional<Wall.Reach> probed = hole.probe();
        Length least = nearest(bore, temperature, hole);
        UnaryOperator<Length> asRead = radius -> bore.expansion().asRead(radius, temperature);
        Optional<Length> fromBarAxis = Optional.of(hole.wallWithin(finish, bore))
                .filter(radius -> !radius.isLessThan(least))
                .filter(radius -> probed.filter(Wall.Reach::fromBarAxis).isEmpty());
        Optional<Length> fromOldAxis = fromBarAxis
                .map(radius -> radius.minus(bore.centringError()))
                .filter(radius -> probed.isEmpty() && !radius.isLessThan(least));
        What what = fromOldAxis.isPresent() ? What.PROBE_WALL : What.PROBE_FROM_BAR_AXIS;
        return fromBarAxis.map(radius -> new Reading(
                hole.name(),
                what,
                fromOldAxis.map(asRead),
                Optional.of(asRead.apply(radius)),
                List.of(),
                Optional.empty()));
    }

    /**
     * How near the farthest wall can lie to any axis: no nearer than half the largest diameter, for two walls share it; and where it was
     * probed from the original axis, no nearer than that less the centring error.
     */
    private static Length nearest(BoreSpec bore, Temperature temperature, Hole hole) {
        Length half = hole.diameters()
                .map(measured -> measured.greatest().halfRoundedUp())
                .orElse(Length.ZERO);
        return hole.probeAt20(bore, temperature)
                .map(reach -> reach.radius().minus(bore.centringError()).max(half))
                .orElse(half);
    }
}
