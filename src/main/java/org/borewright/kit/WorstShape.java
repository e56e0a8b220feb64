package org.borewright.kit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.borewright.measure.Length;
import org.borewright.measure.survey.BoreShape;

/**
 * The worst of one figure among the holes of an engine: an engine is as good as its worst hole, and that may be another for each figure.
 *
 * @param cylinder the hole, the first of those alike
 * @param figure how much it is there
 */
public record WorstShape(String cylinder, Length figure) {

    /** The greatest taper; empty where no hole has a grid. */
    public static Optional<WorstShape> taper(List<HoleReport> holes) {
        return of(holes, BoreShape::taper);
    }

    /** The greatest out-of-round; empty where no hole has a grid. */
    public static Optional<WorstShape> outOfRound(List<HoleReport> holes) {
        return of(holes, BoreShape::outOfRound);
    }

    private static Optional<WorstShape> of(List<HoleReport> holes, Function<BoreShape, Length> figure) {
        return holes.stream()
                .flatMap(report ->
                        report.shape().map(shape -> new WorstShape(report.hole().name(), figure.apply(shape))).stream())
                .reduce((worst, next) -> next.figure.isMoreThan(worst.figure) ? next : worst);
    }
}
