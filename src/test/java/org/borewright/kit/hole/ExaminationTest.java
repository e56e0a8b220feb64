package org.borewright.kit.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.kit.TwinShop.mm;

import java.util.List;
import java.util.stream.Collectors;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.QueriedGrid;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which readings of two holes are put in question before anything is computed; from common practice. */
class ExaminationTest {

    private static final String SOUND = "70.060 70.040 / 70.050 70.030 / 70.020 70.010";
    private static final String OTHER = "70.061 70.041 / 70.052 70.033 / 70.021 70.012";

    /** Each slip by itself, all of one hole together in the order asked, and none of what somebody stands by. */
    @ParameterizedTest(name = "{0}, stood by {1}, beside {2}: {3}; {4}")
    @CsvSource({
        SOUND + ", false, " + OTHER + ", '', ''",
        "70.060 70.040 / 70.320 70.030 / 70.020 70.010, false, " + OTHER + ", STRAY, ''",
        "70.080 70.040 / 70.020 70.060 / 70.050 70.010, false, " + OTHER + ", OPPOSED, ''",
        SOUND + ", false, " + SOUND + ", SAME_GRID, SAME_GRID",
        SOUND + ", true, " + SOUND + ", '', SAME_GRID",
        "70.060 70.040 / 70.320 70.030 / 70.020 70.010, true, " + OTHER + ", '', ''",
        "70.060 70.040 / 70.320 70.030 / 70.020 70.010, false, 70.060 70.040 / 70.320 70.030 / 70.020 70.010, STRAY SAME_GRID, STRAY SAME_GRID",
        // one diameter has no neighbours
        "70.320, false, " + OTHER + ", '', ''",
    })
    void aSlipIsQueriedUnlessAPersonStandsByTheReadings(
            String rows, boolean stoodBy, String beside, String first, String second) {
        List<CylinderSurvey> examined = Examination.of(List.of(
                new CylinderSurvey("1", read(rows), Wall.UNKNOWN, List.of(), stoodBy),
                new CylinderSurvey("2", read(beside), Wall.UNKNOWN, List.of())));

        assertThat(examined).extracting(CylinderSurvey::cylinder).containsExactly("1", "2");
        assertThat(examined).extracting(ExaminationTest::queries).containsExactly(first, second);
        assertThat(examined)
                .allSatisfy(hole -> assertThat(hole.asRead() instanceof QueriedGrid)
                        .isEqualTo(!hole.queries().isEmpty()));
    }

    private static Survey read(String rows) {
        return rows.contains(" ") ? Grids.grid(rows) : new SingleDiameter(mm(rows));
    }

    private static String queries(CylinderSurvey survey) {
        return survey.queries().stream().map(query -> query.kind().name()).collect(Collectors.joining(" "));
    }
}
