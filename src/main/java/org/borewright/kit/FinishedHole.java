package org.borewright.kit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Size;
import org.borewright.fit.Certainty;
import org.borewright.kit.hole.FinishedHoles;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.Work;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * Where one finished hole stands among the sizes.
 *
 * @param cylinder its name
 * @param size the size whose window holds it nearest to target, proven before not proven; empty when it lies between sizes, its
 *     readings are queried, or nobody measured it
 * @param pistons the pistons of that size, of any grade or maker, whose windows hold it, in the same order; empty without a size
 * @param certainty whether the readings prove that the window holds it; no between sizes, possible where they are queried or there are none
 * @param others other sizes whose windows hold it too
 * @param tooLooseFor between sizes: the next smaller size, and by how much the hole is too loose for it
 * @param toGo between sizes: the next larger size, and how much metal to its target; empty where the wall is never cut
 */
public record FinishedHole(
        String cylinder,
        Optional<Size> size,
        List<Piston> pistons,
        Certainty certainty,
        List<Size> others,
        Optional<Gap> tooLooseFor,
        Optional<Gap> toGo) {

    /**
     * A size and how far away it is.
     *
     * @param size the size
     * @param by the distance on the diameter
     */
    public record Gap(Size size, Length by) {}

    /** Where a hole of the engine stands in a table. */
    static FinishedHole of(Hole hole, int index, List<SizeRow> table) {
        if (hole.diameters().isEmpty()) {
            return without(hole, Certainty.POSSIBLE, Optional.empty(), Optional.empty());
        }
        List<SizeRow> made = table.stream()
                .filter(row -> row.choice().isPresent() && row.isBorne())
                .toList();
        List<SizeRow> holding = made.stream()
                .filter(row -> row.holes().get(index).runsAsItIs())
                .sorted(Comparator.comparing(row -> row.holes().get(index), FinishedHoles.bestFitting(hole)))
                .toList();
        return holding.isEmpty()
                ? without(hole, Certainty.NO, tooLoose(hole, index, made), toGo(hole, index, made))
                : held(hole, index, holding);
    }

    private static FinishedHole held(Hole hole, int index, List<SizeRow> holding) {
        List<Size> sizes = holding.stream().map(SizeRow::size).distinct().toList();
        List<Piston> pistons = holding.stream()
                .filter(row -> row.size().equals(sizes.get(0)))
                .flatMap(row -> row.choice().orElseThrow().pistons().get(index).stream())
                .toList();
        return new FinishedHole(
                hole.name(),
                Optional.of(sizes.get(0)),
                FinishedHoles.holding(hole, pistons),
                holding.get(0).holes().get(index).certainty(),
                sizes.subList(1, sizes.size()),
                Optional.empty(),
                Optional.empty());
    }

    private static FinishedHole without(Hole hole, Certainty certainty, Optional<Gap> tooLooseFor, Optional<Gap> toGo) {
        return new FinishedHole(hole.name(), Optional.empty(), List.of(), certainty, List.of(), tooLooseFor, toGo);
    }

    private static Optional<Gap> tooLoose(Hole hole, int index, List<SizeRow> made) {
        Limits diameters = hole.diameters().orElseThrow();
        return made.stream()
                .map(row -> new Gap(
                        row.size(),
                        diameters
                                .greatest()
                                .minus(largestHole(row.holes().get(index).piston()))))
                .filter(gap -> gap.by().isMoreThan(Length.ZERO))
                .min(Comparator.comparing(Gap::by));
    }

    private static Optional<Gap> toGo(Hole hole, int index, List<SizeRow> made) {
        Limits diameters = hole.diameters().orElseThrow();
        return made.stream()
                .filter(row -> row.holes().get(index).work() != Work.AS_IS)
                .map(row -> new Gap(
                        row.size(),
                        row.holes()
                                .get(index)
                                .piston()
                                .shape()
                                .finishForCleanUp()
                                .minus(diameters.least())))
                .filter(gap -> gap.by().isMoreThan(Length.ZERO))
                .min(Comparator.comparing(Gap::by));
    }

    /** The largest hole the smallest piston may run in. */
    private static Length largestHole(Piston piston) {
        return piston.shape().diameter().least().plus(piston.shape().clearance().greatest());
    }
}
