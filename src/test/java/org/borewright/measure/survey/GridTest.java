package org.borewright.measure.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.borewright.measure.survey.Grids.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GridTest {

    /** Depths 10, 20, 30 and 40 mm; the row at 20 mm lies over a port. */
    private static final Grid OVER_A_PORT = grid("70.010 70.020 / - - / 70.060 - / 70.030 70.025");

    @ParameterizedTest
    @CsvSource(textBlock = """
            0,         70.060
            9.999999,  70.060
            10,        70.020
            10.000001, 70.060
            15,        70.060
            20,        70.060
            29.999999, 70.060
            30,        70.060
            30.000001, 70.060
            39.999999, 70.060
            40,        70.030
            40.000001, 70.060
            400,       70.060
            """)
    void aDefectBetweenTwoRowsIsJudgedOnTheLargerOfTheNearestMeasuredAndElsewhereOnTheLargestOfAll(
            Length depth, Length largest) {
        assertThat(OVER_A_PORT.largestNear(depth)).contains(largest);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            - - / 70.010 - / - - / - -, 5,  70.010
            - - / 70.010 - / - - / - -, 35, 70.010
            70.000 / 70.050 / 70.020,   20, 70.050
            70.000 / 70.050 / 70.020,   10, 70.000
            70.000 / 70.050 / 70.020,   30, 70.020
            """)
    void rowsOverAPortTellNothing(String rows, Length depth, Length largest) {
        assertThat(grid(rows).largestNear(depth)).contains(largest);
    }

    @Property
    boolean noDepthShowsMoreThanTheLargestOfAll(@ForAll @LongRange(min = -10_000, max = 60_000) long micrometres) {
        Length near = OVER_A_PORT.largestNear(Length.ofMicrometres(micrometres)).orElseThrow();
        return !near.isMoreThan(OVER_A_PORT.largest().orElseThrow())
                && OVER_A_PORT.readings().contains(near);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            70.010 70.020 / - - / 70.060 - / 70.030 70.025, 5, 70.010, 70.060
            70.010,                                         1, 70.010, 70.010
            """)
    void onlyMeasuredCellsAreReadings(String rows, int count, Length smallest, Length largest) {
        assertThat(grid(rows).readings()).hasSize(count);
        assertThat(grid(rows).smallest()).contains(smallest);
        assertThat(grid(rows).largest()).contains(largest);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            10 20,    0 90,    the rows do not match the depths and axes
            10,       0 90,    the rows do not match the depths and axes
            10 20 30, 0,       the rows do not match the depths and axes
            10 20 30, 0 90 45, the rows do not match the depths and axes
            10 20 30, 0 0,     an axis is named twice
            10 20 20, 0 90,    depth 20.000 mm does not lie below the one before
            10 30 20, 0 90,    depth 20.000 mm does not lie below the one before
            """)
    void aGridThatIsNoGridIsRefused(String depths, String axes, String reason) {
        List<Length> levels = words(depths).map(Length::parseMillimetres).toList();
        List<Axis> angles = words(axes).map(Integer::parseInt).map(Axis::new).toList();
        var rows = grid("70.000 70.001 / 70.002 70.003 / 70.004 70.005").rows();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Grid(levels, angles, rows))
                .withMessage(reason);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-", "- -", "- - / - -"})
    void aGridWithoutAReadingIsRefused(String rows) {
        assertThatIllegalArgumentException().isThrownBy(() -> grid(rows)).withMessage("no cell holds a reading");
    }

    @Test
    void aGridWithoutDepthsHoldsNoReading() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Grid(List.of(), List.of(Axis.THRUST), List.of()))
                .withMessage("no cell holds a reading");
    }

    @Test
    void aCorrectionReachesEveryReadingAndLeavesThePortsOpen() {
        assertThat(OVER_A_PORT.map(reading -> reading.plus(Length.ofMicrometres(1))))
                .isEqualTo(grid("70.011 70.021 / - - / 70.061 - / 70.031 70.026"));
    }

    @Test
    void aGridKeepsItsOwnCopy() {
        List<Optional<Length>> row = new ArrayList<>(List.of(Optional.of(Length.ofMicrometres(70_000))));
        Grid grid = new Grid(Grids.depths(1), List.of(Axis.THRUST), List.of(row));
        row.set(0, Optional.empty());
        assertThat(grid.readings()).hasSize(1);
    }

    private static Stream<String> words(String text) {
        return Arrays.stream(text.split(" "));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "70.1 70.2 / 70.1 70.2 / 70.1 70.2, true",
        "70.1 70.2 / 70.1 70.2 / 70.1 -, false",
        "70.1 70.2 / - - / 70.1 70.2 / 70.1 70.2, true",
        "70.1 70.2 - / 70.1 - 70.2 / - 70.1 70.2, true",
        "70.1 70.2 / 70.1 70.2, false",
        "70.1 / 70.1 / 70.1, false",
    })
    void taperAndOutOfRoundAreShownByTwoAxesAtThreeDepths(String rows, boolean shown) {
        assertThat(grid(rows).depthsReadAcross(45).size() >= 3).isEqualTo(shown);
    }

    @ParameterizedTest(name = "{0}° apart: {1}")
    @CsvSource({"44, false", "45, true", "46, true"})
    void twoAxesReadARowAcrossFromAnAngleOn(int apart, boolean across) {
        Grid oneRow = new Grid(
                Grids.depths(1),
                List.of(Axis.THRUST, new Axis(apart)),
                grid("70.010 70.020").rows());

        assertThat(oneRow.depthsReadAcross(45).isEmpty()).isNotEqualTo(across);
    }

    @Test
    void aProfileNeedsTwoReadingsAlongItsAxis() {
        assertThat(OVER_A_PORT.profiles())
                .containsExactly(lengths("70.010", "70.060", "70.030"), lengths("70.020", "70.025"));
        assertThat(grid("70.010 70.020 / 70.015 -").profiles()).containsExactly(lengths("70.010", "70.015"));
    }

    @Test
    void aReadingIsToldWithItsPlace() {
        assertThat(OVER_A_PORT.reading(2, 0)).contains(new Reading(mm("30"), Axis.THRUST, mm("70.060")));
        assertThat(OVER_A_PORT.reading(2, 1)).isEmpty();
    }

    /** The rows that a defect there is judged on, and no other. */
    @ParameterizedTest(name = "at {0}: {1}")
    @CsvSource({
        "10, 71.010 71.020 / - - / 70.060 - / 70.030 70.025",
        "20, 71.010 71.020 / - - / 71.060 - / 70.030 70.025",
        "35, 70.010 70.020 / - - / 71.060 - / 71.030 71.025",
        "40, 70.010 70.020 / - - / 70.060 - / 71.030 71.025",
        "50, 71.010 71.020 / - - / 71.060 - / 71.030 71.025",
    })
    void onlyWhatIsReadNearADepthIsChanged(Length depth, String changed) {
        assertThat(OVER_A_PORT.mapNear(depth, reading -> reading.plus(mm("1")))).isEqualTo(grid(changed));
    }

    private static List<Length> lengths(String... millimetres) {
        return Arrays.stream(millimetres).map(GridTest::mm).toList();
    }

    private static Length mm(String millimetres) {
        return Length.parseMillimetres(millimetres);
    }

    @ParameterizedTest(name = "from {1} down in {0}: {2}")
    @CsvSource({
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 10, 70.4",
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 10.000001, 70.3",
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 20, 70.3",
        "70.4 70.9 / - 70.9 / 70.2 70.9, 20, 70.2",
        "70.4 70.9 / 70.3 70.9 / - 70.9, 30,",
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 31,",
    })
    void theLargestAlongAnAxisIsSoughtFromADepthDown(String rows, Length from, Length largest) {
        Grid grid = grid(rows);

        assertThat(grid.largestAlong(Axis.THRUST, from)).isEqualTo(Optional.ofNullable(largest));
        assertThat(grid.largestAlong(new Axis(45), from)).isEmpty();
    }

    @ParameterizedTest(name = "at {1} in {0}: {2}")
    @CsvSource({
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 9.999999,",
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 10, 10",
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 29.999999, 20",
        "70.4 70.9 / - 70.9 / 70.2 70.9, 29.999999, 10",
        "- 70.9 / 70.3 70.9 / 70.2 70.9, 15,",
        "70.4 70.9 / 70.3 70.9 / 70.2 70.9, 400, 30",
    })
    void theLastReadingAlongAnAxisThatWasTakenAtADepthOrAboveItIsFound(String rows, Length at, Length last) {
        assertThat(grid(rows).lastRead(Axis.THRUST, at)).isEqualTo(Optional.ofNullable(last));
        assertThat(grid(rows).lastRead(new Axis(45), at)).isEmpty();
    }
}
