package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.measure.survey.Grids.grid;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.measure.Length;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Survey;
import org.borewright.measure.survey.Wall;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SameGridTest {

    private static final String WORN = "70.090 70.040 / 70.050 70.030 / 70.020 70.010";

    @ParameterizedTest
    @CsvSource(textBlock = """
            70.090 70.040 / 70.050 70.030 / 70.020 70.010, 70.090 70.040 / 70.050 70.030 / 70.020 70.010,    true
            70.090 70.040 / 70.050 70.030 / 70.020 70.010, 70.090 70.040 / 70.050 70.030 / 70.020 70.010001, false
            70.090 70.040 / 70.050 70.030 / 70.020 70.010, 70.040 70.090 / 70.030 70.050 / 70.010 70.020,    false
            70.090 70.040 / 70.050 70.030 / 70.020 70.010, 70.090 70.040 / 70.050 70.030,                    false
            70.090 70.040 / - - / 70.020 70.010,           70.090 70.040 / - - / 70.020 70.010,              true
            70.090 70.040 / - - / 70.020 70.010,           70.090 70.040 / - 70.030 / 70.020 70.010,         false
            70.010 70.010 / 70.010 70.010 / 70.010 70.010, 70.010 70.010 / 70.010 70.010 / 70.010 70.010,    false
            70.010 70.010 / 70.010 70.010 / 70.010 70.010001, 70.010 70.010 / 70.010 70.010 / 70.010 70.010001, true
            70.090 / 70.050 / 70.020,                      70.090 / 70.050 / 70.020,                         true
            70.090 70.040,                                 70.090 70.040,                                    false
            70.090,                                        70.090,                                           false
            """)
    void gridsThatAgreeInEveryPlaceAreQueried(String first, String second, boolean queried) {
        List<CylinderSurvey> holes = holes(grid(first), grid(second));

        assertThat(SameGrid.of(holes.get(0), holes).isPresent()).isEqualTo(queried);
        assertThat(SameGrid.of(holes.get(1), holes).isPresent()).isEqualTo(queried);
    }

    @Test
    void allWithTheSameGridAreNamedAndNotTheHoleItself() {
        List<CylinderSurvey> holes = holes(grid(WORN), grid("70.1 70.2 / 70.3 70.4"), grid(WORN), grid(WORN));

        assertThat(holes)
                .map(hole -> SameGrid.of(hole, holes).map(Query::sameAs).orElse(List.of()))
                .containsExactly(List.of("3", "4"), List.of(), List.of("1", "4"), List.of("1", "3"));
    }

    @Test
    void theOrderInWhichTheAxesAreWrittenDoesNotMatter() {
        Grid grid = grid(WORN);
        Grid turned = new Grid(
                grid.depths(),
                List.of(grid.axes().get(1), grid.axes().get(0)),
                grid.rows().stream().map(row -> List.of(row.get(1), row.get(0))).toList());
        List<CylinderSurvey> holes = holes(grid, turned);

        assertThat(SameGrid.of(holes.get(1), holes)).contains(Query.sameGridAs(List.of("1")));
    }

    @Test
    void theSameFiguresAtOtherDepthsAreAnotherGrid() {
        Grid grid = grid(WORN);
        List<Length> deeper = grid.depths().stream()
                .map(depth -> depth.plus(Length.ofNanometres(1)))
                .toList();
        List<CylinderSurvey> holes = holes(grid, new Grid(deeper, grid.axes(), grid.rows()));

        assertThat(SameGrid.of(holes.get(0), holes)).isEmpty();
    }

    @Test
    void singleDiametersAndHolesNotMeasuredAreNotAskedAbout() {
        Survey single = new SingleDiameter(Length.ofMicrometres(70_090));
        List<CylinderSurvey> holes = holes(single, single, new NotMeasured(), new NotMeasured(), grid(WORN));

        assertThat(holes).map(hole -> SameGrid.of(hole, holes)).containsOnly(Optional.empty());
    }

    /** Holes 1, 2, 3 … */
    private static List<CylinderSurvey> holes(Survey... surveys) {
        List<Survey> asRead = Arrays.asList(surveys);
        return IntStream.range(0, asRead.size())
                .mapToObj(i -> new CylinderSurvey(String.valueOf(i + 1), asRead.get(i), Wall.UNKNOWN, List.of()))
                .toList();
    }
}
