package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Finding.Kind;
import org.borewright.measure.survey.Finding.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CylinderSurveyTest {

    /** Findings as kind or kind@depth. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            FINDINGS,                  MACHINABLE, BEYOND, ALWAYS, OPEN
            '',                        false,      false,  false,  false
            STAIN PAINT,               false,      false,  false,  false
            WORN,                      true,       false,  false,  false
            SCORED,                    true,       false,  false,  true
            SCORED@0.1,                true,       false,  false,  false
            SCORED@0.1 PITTED,         true,       false,  false,  true
            STAIN CORRODED@0.02,       true,       false,  true,   false
            SEIZED,                    true,       false,  true,   true
            HOLED,                     false,      true,   false,  false
            STAIN MELTED WORN,         true,       true,   false,  false
            SMEARED_ALUMINIUM,         false,      false,  false,  false
            """)
    void theWorstFindingCounts(String findings, boolean machinable, boolean beyond, boolean always, boolean open) {
        CylinderSurvey survey = survey(Arrays.stream(findings.split(" "))
                .filter(word -> !word.isEmpty())
                .map(CylinderSurveyTest::finding)
                .toList());
        assertThat(survey.has(Weight.MACHINABLE)).isEqualTo(machinable);
        assertThat(survey.has(Weight.BEYOND_MACHINING)).isEqualTo(beyond);
        assertThat(survey.isBeyondMachining(true)).isEqualTo(beyond);
        assertThat(survey.isBeyondMachining(false)).isEqualTo(beyond || machinable);
        assertThat(survey.isAlwaysMachined()).isEqualTo(always);
        assertThat(survey.hasUnknownDepth()).isEqualTo(open);
    }

    @Test
    void aFindingIsKnownByItsKind() {
        CylinderSurvey survey = survey(List.of(finding("STAIN"), finding("SCORED@0.1")));
        assertThat(survey.has(Kind.SCORED)).isTrue();
        assertThat(survey.has(Kind.PITTED)).isFalse();
    }

    /** A sleeve or the least wall is measured from outside, and a finding seen: the warmth of the hole matters to none. */
    @ParameterizedTest(name = "bore {0}, unworn wall {1}, probed {2}: {3}")
    @CsvSource({
        ", , , false",
        "70.010, , , true",
        ", 70.000, , true",
        ", , 35.020, true",
        "70.010, 70.000, 35.020, true"
    })
    void itMattersHowWarmTheHoleWasOnceAnythingInsideIsRead(Length bore, Length unworn, Length probed, boolean isRead) {
        Wall wall = new Wall(
                Optional.empty(),
                Optional.ofNullable(unworn),
                Optional.ofNullable(probed).map(radius -> new Wall.Reach(radius, false)),
                Optional.empty(),
                Optional.empty(),
                false);
        Survey survey = bore == null ? new NotMeasured() : new SingleDiameter(bore);

        assertThat(new CylinderSurvey("1", survey, wall, List.of(finding("WORN"))).isRead())
                .isEqualTo(isRead);
    }

    @Test
    void ofAHoleNobodySurveyedOnlyTheNameIsKnown() {
        assertThat(CylinderSurvey.unsurveyed("2"))
                .isEqualTo(new CylinderSurvey("2", new NotMeasured(), Wall.UNKNOWN, List.of()));
    }

    @Test
    void whatIsNotedLaterDoesNotReachTheSurvey() {
        List<Finding> notes = new ArrayList<>(List.of(finding("STAIN")));
        CylinderSurvey survey = survey(notes);
        notes.add(finding("HOLED"));
        assertThat(survey.has(Weight.BEYOND_MACHINING)).isFalse();
    }

    private static CylinderSurvey survey(List<Finding> findings) {
        return new CylinderSurvey("1", new NotMeasured(), Wall.UNKNOWN, findings);
    }

    private static Finding finding(String word) {
        int at = word.indexOf('@');
        Kind kind = Kind.valueOf(at < 0 ? word : word.substring(0, at));
        Optional<Length> depth =
                at < 0 ? Optional.empty() : Optional.of(Length.parseMillimetres(word.substring(at + 1)));
        return new Finding(kind, depth, Optional.empty());
    }
}
