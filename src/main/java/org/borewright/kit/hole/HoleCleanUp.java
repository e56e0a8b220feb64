package org.borewright.kit.hole;

import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import org.borewright.fit.Certainty;
import org.borewright.fit.CleanUp;
import org.borewright.fit.HoneOnly;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;

/** What a surveyed hole needs to come out clean: every place and every defect asked, the largest decides. */
public final class HoleCleanUp {

    private HoleCleanUp() {}

    /**
     * By the bar. The worst is not known where a defect's depth, the size when new or the hole itself is not.
     *
     * @param probe the probed wall; empty when it was not probed, or when the probe contradicts the diameters
     * @param reading the uncertainty of one diameter
     */
    static CleanUp byBar(
            CylinderSurvey at20,
            Optional<Wall.Reach> probe,
            Optional<WhenNew> whenNew,
            Length centringError,
            Uncertainty reading) {
        Optional<Length> largest = at20.asRead().largest();
        Optional<Length> best = needed(at20.asRead(), at20.findings(), largest, CleanUp::bestAt);
        Optional<Length> worst = isOpen(at20)
                ? Optional.empty()
                : probe.map(reach -> probed(reach, at20, whenNew, centringError))
                        .or(() -> unprobed(at20, largest, whenNew, centringError))
                        .map(needed -> best.map(needed::max).orElse(needed));
        Optional<Length> reach = probe.filter(believed -> !isOpen(at20))
                .map(wall -> CleanUp.reached(wall.radius(), centringError, wall.fromBarAxis()));
        Length guard = ofDeciding(probe, reading).expanded().doubled();
        return new CleanUp(worst, best, reach, guard, reading.expanded());
    }

    /** Beside a probed wall the diameters still count, so what probed it makes it no more certain than they are. */
    static Uncertainty ofDeciding(Optional<Wall.Reach> probe, Uncertainty reading) {
        return probe.flatMap(Wall.Reach::uncertainty)
                .map(reading::withCalibrationNoBetterThan)
                .orElse(reading);
    }

    /**
     * By the hone alone; empty when nothing was measured.
     *
     * @param beyond what the hone takes beyond the largest reading
     */
    static Optional<Length> byHone(Survey at20, List<Finding> findings, Length beyond) {
        return needed(at20, findings, at20.largest(), (diameter, depth) -> HoneOnly.cleanUp(diameter, depth, beyond));
    }

    /**
     * Whether something stands in the way of calling any size certain: a depth not measured, work to be done first, or a reading in question,
     * for then a wall probed with the same hand is no better.
     */
    static boolean isOpen(CylinderSurvey survey) {
        return survey.hasUnknownDepth()
                || survey.has(Finding.Weight.HOLD)
                || !survey.queries().isEmpty();
    }

    /** A certainty as far as the survey lets it be proven: at most possible while something stands in the way. */
    static Certainty proven(CylinderSurvey survey, Certainty certainty) {
        return isOpen(survey) ? certainty.and(Certainty.POSSIBLE) : certainty;
    }

    /** The wall probed; behind it a finding, which needs no more than the diameters leave possible at the height where it lies. */
    private static Length probed(
            Wall.Reach reach, CylinderSurvey at20, Optional<WhenNew> whenNew, Length centringError) {
        Length wall = CleanUp.probed(reach.radius(), centringError, reach.fromBarAxis());
        Length needed = wall;
        for (Finding finding : at20.findings()) {
            Length behindWall = wall.plus(finding.cut().doubled());
            needed = needed.max(worstWhereItLies(finding, at20, whenNew, centringError)
                    .map(behindWall::min)
                    .orElse(behindWall));
        }
        return needed;
    }

    /** All wear on one wall at the height of a finding; empty where its height or the size when new is not known. */
    private static Optional<Length> worstWhereItLies(
            Finding finding, CylinderSurvey at20, Optional<WhenNew> whenNew, Length centringError) {
        return finding.height()
                .flatMap(at20.asRead()::largestNear)
                .flatMap(there ->
                        whenNew.map(known -> CleanUp.worstAt(there, known.diameter(), centringError, finding.cut())));
    }

    private static Optional<Length> unprobed(
            CylinderSurvey at20, Optional<Length> largest, Optional<WhenNew> whenNew, Length centringError) {
        return whenNew.flatMap(known -> needed(
                at20.asRead(),
                at20.findings(),
                largest,
                (diameter, defect) -> CleanUp.worstAt(diameter, known.diameter(), centringError, defect)));
    }

    /**
     * How far behind the farthest wall the bar must cut to come to a size: for the deepest finding that may lie there, less those that
     * the diameters at their height prove to be cut out wherever the wall stands.
     *
     * @param proven what the bar's size clears for certain
     */
    static Length behindWall(CylinderSurvey at20, Optional<WhenNew> whenNew, Length centringError, Length proven) {
        return at20.findings().stream()
                .filter(finding -> worstWhereItLies(finding, at20, whenNew, centringError)
                        .filter(worst -> !proven.isLessThan(worst))
                        .isEmpty())
                .map(Finding::cut)
                .reduce(Length.ZERO, Length::max);
    }

    /** How deep the deepest finding is that is to be cut out; zero where nothing is. */
    public static Length deepest(CylinderSurvey survey) {
        return survey.findings().stream().map(Finding::cut).reduce(Length.ZERO, Length::max);
    }

    /** The largest that any place needs: the largest diameter without a defect, or a defect where it lies. */
    private static Optional<Length> needed(
            Survey at20, List<Finding> findings, Optional<Length> largest, BinaryOperator<Length> cleanUp) {
        return largest.map(diameter -> {
            Length needed = cleanUp.apply(diameter, Length.ZERO);
            for (Finding finding : findings) {
                Length there = finding.height().flatMap(at20::largestNear).orElse(diameter);
                needed = needed.max(cleanUp.apply(there, finding.cut()));
            }
            return needed;
        });
    }
}
