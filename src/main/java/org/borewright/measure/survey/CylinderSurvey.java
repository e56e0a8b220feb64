package org.borewright.measure.survey;

import java.util.List;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.Uncertainty;

/**
 * All that is known of one hole.
 *
 * @param cylinder its name as the engine maker counts
 * @param survey the diameters, corrected to 20 °C
 * @param uncertainty of one diameter; empty when nothing was measured
 * @param wall what is known of the wall around it
 * @param findings what was seen
 */
public record CylinderSurvey(
        String cylinder, Survey survey, Optional<Uncertainty> uncertainty, Wall wall, List<Finding> findings) {

    /** Copies the findings. */
    public CylinderSurvey {
        findings = List.copyOf(findings);
    }

    /** The expanded uncertainty of one diameter; zero when nothing was measured. */
    public Length expandedUncertainty() {
        return uncertainty.map(Uncertainty::expanded).orElse(Length.ZERO);
    }

    /** Whether a finding of this weight is among them. */
    public boolean has(Finding.Weight weight) {
        return findings.stream().anyMatch(finding -> finding.kind().weight() == weight);
    }

    /** Whether the wall must be cut whatever the diameter says. */
    public boolean isAlwaysMachined() {
        return findings.stream().anyMatch(finding -> finding.kind().alwaysMachined());
    }
}
