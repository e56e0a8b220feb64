package org.borewright.kit.hole;

import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import org.borewright.fit.CleanUp;
import org.borewright.fit.HoneOnly;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;

/** What a surveyed hole needs to come out clean: every place and every defect asked, the largest decides. */
public final class HoleCleanUp {

    private HoleCleanUp() {}

    /** By the bar. The worst is not known where a defect's depth, the size when new or the hole itself is not. */
    public static CleanUp byBar(Hole hole, Length centringError) {
        CylinderSurvey survey = hole.survey();
        Optional<Length> worst = isOpen(survey) ? Optional.empty() : worst(hole, centringError);
        Length uncertainty = hole.expandedUncertainty();
        return new CleanUp(worst, largestOf(hole, CleanUp::bestAt), uncertainty.doubled(), uncertainty);
    }

    /** By the hone alone; empty when nothing was measured. */
    public static Optional<Length> byHone(Hole hole) {
        return largestOf(hole, HoneOnly::cleanUp);
    }

    /** Whether something stands in the way of calling any size certain: a depth not measured, or work to be done first. */
    public static boolean isOpen(CylinderSurvey survey) {
        return survey.hasUnknownDepth() || survey.has(Finding.Weight.HOLD);
    }

    private static Optional<Length> worst(Hole hole, Length centringError) {
        return hole.survey()
                .wall()
                .reach()
                .map(reach -> CleanUp.probed(reach.radius(), centringError, reach.fromBarAxis())
                        .plus(deepest(hole.survey()).doubled()))
                .or(() -> hole.whenNew()
                        .flatMap(whenNew -> largestOf(
                                hole,
                                (diameter, defect) ->
                                        CleanUp.worstAt(diameter, whenNew.diameter(), centringError, defect))));
    }

    private static Length deepest(CylinderSurvey survey) {
        return survey.findings().stream().map(Finding::cut).reduce(Length.ZERO, Length::max);
    }

    private static Optional<Length> largestOf(Hole hole, BinaryOperator<Length> cleanUp) {
        return hole.at20()
                .largest()
                .map(largest -> Stream.concat(
                                Stream.of(cleanUp.apply(largest, Length.ZERO)),
                                hole.survey().findings().stream()
                                        .map(finding ->
                                                cleanUp.apply(diameterAt(hole, finding, largest), finding.cut())))
                        .reduce(Length.ZERO, Length::max));
    }

    private static Length diameterAt(Hole hole, Finding finding, Length largest) {
        return finding.height().flatMap(hole.at20()::largestNear).orElse(largest);
    }
}
