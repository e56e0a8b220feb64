package org.borewright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Engine;
import org.borewright.fit.Certainty;
import org.borewright.fit.CleanUp;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.HoleAtSize;
import org.borewright.kit.hole.HoleCleanUp;
import org.borewright.kit.hole.Work;
import org.borewright.measure.Length;
import org.borewright.measure.survey.NotMeasured;

/**
 * The smallest size that is possible and not certain, and the readings that would make it certain: one probed wall can save a step.
 *
 * @param row the possible size
 * @param readings one for each hole in the way
 */
public record Settling(SizeRow row, List<Reading> readings) {

    /** What to read. */
    public enum What {
        /** The diameter itself. */
        MEASURE_HOLE("measure the hole"),
        /** The depth of a finding. */
        MEASURE_DEPTH("measure the depth of the finding"),
        /** How far the worn wall stands off the axis. */
        PROBE_WALL("probe the wall: it settles the size if it lies within this of the axis"),
        /** The clearance with a better gauge. */
        BETTER_GAUGE("measure again with a gauge of a smaller uncertainty");

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
     * One reading that would settle a hole.
     *
     * @param cylinder the hole
     * @param what to read
     * @param within the figure it must not exceed; empty where there is none
     */
    public record Reading(String cylinder, What what, Optional<Length> within) {}

    /** The smallest possible row below a limit, and what would settle it; empty when there is none. */
    static Optional<Settling> of(Engine engine, List<Hole> holes, List<SizeRow> table, Optional<SizeRow> named) {
        return table.stream()
                .filter(SizeRow::mightServe)
                .filter(row ->
                        named.map(size -> row.size().compareTo(size.size()) < 0).orElse(true))
                .findFirst()
                .map(row -> new Settling(row, readings(engine, holes, row)));
    }

    private static List<Reading> readings(Engine engine, List<Hole> holes, SizeRow row) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < holes.size(); i++) {
            HoleAtSize fate = row.holes().get(i);
            if (fate.certainty() == Certainty.POSSIBLE) {
                readings.add(reading(engine.bore(), holes.get(i), fate));
            }
        }
        return readings;
    }

    private static Reading reading(BoreSpec bore, Hole hole, HoleAtSize fate) {
        if (hole.at20() instanceof NotMeasured) {
            return new Reading(hole.name(), What.MEASURE_HOLE, Optional.empty());
        }
        if (HoleCleanUp.isOpen(hole.survey())) {
            return new Reading(hole.name(), What.MEASURE_DEPTH, Optional.empty());
        }
        if (fate.work() != Work.REBORE) {
            return new Reading(hole.name(), What.BETTER_GAUGE, Optional.empty());
        }
        Length guard = hole.uncertainty().doubled();
        Length within = CleanUp.wallWithin(
                fate.piston().shape().finishForCleanUp(), bore.honeStock(), guard, bore.centringError());
        return new Reading(hole.name(), What.PROBE_WALL, Optional.of(within));
    }
}
