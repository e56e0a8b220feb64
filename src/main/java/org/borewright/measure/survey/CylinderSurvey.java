package org.borewright.measure.survey;

import java.util.List;
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
 */
public record CylinderSurvey(String cylinder, Survey asRead, Wall wall, List<Finding> findings) {

    /** Copies the findings. */
    public CylinderSurvey {
        findings = List.copyOf(findings);
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
        return new CylinderSurvey(cylinder, asRead.map(gauged), wall.map(gauged, probed), findings);
    }

    /** Whether a finding of this weight is among them. */
    public boolean has(Finding.Weight weight) {
        return any(finding -> finding.kind().weight() == weight);
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
