package org.borewright.kit.hole;

import java.util.Optional;
import java.util.function.BinaryOperator;
import org.borewright.fit.CleanUp;
import org.borewright.fit.HoneOnly;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Survey;

/** What a surveyed hole needs to come out clean: every place and every defect asked, the largest decides. */
public final class HoleCleanUp {

    private HoleCleanUp() {}

    /** By the bar. The worst is not known where a defect's depth, the size when new or the hole itself is not. */
    static CleanUp byBar(
            CylinderSurvey survey, Survey at20, Optional<WhenNew> whenNew, Length centringError, Length uncertainty) {
        Optional<Length> worst = isOpen(survey) ? Optional.empty() : worst(survey, at20, whenNew, centringError);
        return new CleanUp(worst, largestOf(survey, at20, CleanUp::bestAt), uncertainty.doubled(), uncertainty);
    }

    /** By the hone alone; empty when nothing was measured. */
    static Optional<Length> byHone(CylinderSurvey survey, Survey at20) {
        return largestOf(survey, at20, HoneOnly::cleanUp);
    }

    /** Whether something stands in the way of calling any size certain: a depth not measured, or work to be done first. */
    public static boolean isOpen(CylinderSurvey survey) {
        return survey.hasUnknownDepth() || survey.has(Finding.Weight.HOLD);
    }

    private static Optional<Length> worst(
            CylinderSurvey survey, Survey at20, Optional<WhenNew> whenNew, Length centringError) {
        return survey.wall()
                .reach()
                .map(reach -> CleanUp.probed(reach.radius(), centringError, reach.fromBarAxis())
                        .plus(deepest(survey).doubled()))
                .or(() -> whenNew.flatMap(known -> largestOf(
                        survey,
                        at20,
                        (diameter, defect) -> CleanUp.worstAt(diameter, known.diameter(), centringError, defect))));
    }

    private static Length deepest(CylinderSurvey survey) {
        return survey.findings().stream().map(Finding::cut).reduce(Length.ZERO, Length::max);
    }

    private static Optional<Length> largestOf(CylinderSurvey survey, Survey at20, BinaryOperator<Length> cleanUp) {
        return at20.largest().map(largest -> {
            Length needed = cleanUp.apply(largest, Length.ZERO);
            for (Finding finding : survey.findings()) {
                Length diameter = finding.height().flatMap(at20::largestNear).orElse(largest);
                needed = needed.max(cleanUp.apply(diameter, finding.cut()));
            }
            return needed;
        });
    }
}
