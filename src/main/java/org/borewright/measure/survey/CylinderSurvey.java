package org.borewright.measure.survey;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.borewright.measure.Length;

/**
 * All that was noted of one hole, as read: nothing corrected yet.
 *
 * @param cylinder its name as the engine maker counts
 * @param asRead the diameters as the gauge showed them
 * @param wall what is known of the wall around it
 * @param findings what was seen
 * @param readingsChecked whether a person read the places again and stands by the readings, so that none is queried
 */
public record CylinderSurvey(
        String cylinder, Survey asRead, Wall wall, List<Finding> findings, boolean readingsChecked) {

    /** Copies the findings. */
    public CylinderSurvey {
        findings = List.copyOf(findings);
    }

    /** A survey as first noted: nobody read any place again. */
    public CylinderSurvey(String cylinder, Survey asRead, Wall wall, List<Finding> findings) {
        this(cylinder, asRead, wall, findings, false);
    }

    /** A hole of which nothing is known but its name. */
    public static CylinderSurvey unsurveyed(String cylinder) {
        return new CylinderSurvey(cylinder, new NotMeasured(), Wall.UNKNOWN, List.of());
    }

    /**
     * The same survey with what was read inside the hole changed: corrected to 20 °C.
     *
     * @param gauged what becomes of a diameter, which the gauge took
     * @param probed what becomes of a radius, which it did not take
     */
    public CylinderSurvey map(UnaryOperator<Length> gauged, UnaryOperator<Length> probed) {
        return new CylinderSurvey(cylinder, asRead.map(gauged), wall.map(gauged, probed), findings, readingsChecked);
    }

    /** The same survey with more known of the wall. */
    public CylinderSurvey with(Wall known) {
        return new CylinderSurvey(cylinder, asRead, known, findings, readingsChecked);
    }

    /** The same survey with other diameters. */
    public CylinderSurvey with(Survey diameters) {
        return new CylinderSurvey(cylinder, diameters, wall, findings, readingsChecked);
    }

    /** The same survey with the wall probed at another radius. */
    public CylinderSurvey reaching(Length radius) {
        return new CylinderSurvey(cylinder, asRead, wall.reaching(radius), findings, readingsChecked);
    }

    /** The same survey with every finding that nobody noted the height of at one height below the deck. */
    public CylinderSurvey placed(Length height) {
        List<Finding> all = findings.stream()
                .map(finding -> new Finding(
                        finding.kind(),
                        finding.depth(),
                        Optional.of(finding.height().orElse(height))))
                .toList();
        return new CylinderSurvey(cylinder, asRead, wall, all, readingsChecked);
    }

    /** The same survey with its grid in question. */
    public CylinderSurvey queried(List<Query> queries) {
        return with(new QueriedGrid(queries));
    }

    /** What is asked about its readings; empty where nothing is. */
    public List<Query> queries() {
        return asRead instanceof QueriedGrid queried ? queried.queries() : List.of();
    }

    /** Whether anything was read inside the hole, so that it matters how warm it was: a diameter, unworn wall, or the reach of a worn one. */
    public boolean isRead() {
        return !(asRead instanceof NotMeasured)
                || wall.unworn().isPresent()
                || wall.reach().isPresent();
    }

    /** Whether a finding of this weight is among them. */
    public boolean has(Finding.Weight weight) {
        return any(finding -> finding.kind().weight() == weight);
    }

    /** Whether a finding of this kind is among them. */
    public boolean has(Finding.Kind kind) {
        return any(finding -> finding.kind() == kind);
    }

    /** Whether a finding is among them that no machining settles, in a wall that bar and hone may touch or may not. */
    public boolean isBeyondMachining(boolean mayBeCut) {
        return any(finding -> finding.weightIn(mayBeCut) == Finding.Weight.BEYOND_MACHINING);
    }

    /** Whether the wall must be cut whatever the diameter says. */
    public boolean isAlwaysMachined() {
        return any(finding -> finding.kind().alwaysMachined());
    }

    /** Whether a finding must be cut out and nobody measured how deep. */
    public boolean hasUnknownDepth() {
        return any(Finding::isOfUnknownDepth);
    }

    private boolean any(Predicate<Finding> asked) {
        for (Finding finding : findings) {
            if (asked.test(finding)) {
                return true;
            }
        }
        return false;
    }
}
