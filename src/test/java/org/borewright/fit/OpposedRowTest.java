package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.measure.survey.Grids.grid;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OpposedRowTest {

    /** Rows from the deck down, thrust, pin, then 45°; the depth of the row in question, or nothing. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            70.090 70.040 / 70.020 70.060 / 70.050 70.010,                   20
            70.040 70.090 / 70.060 70.020 / 70.010 70.050,                   20
            70.020 70.060 / 70.090 70.040 / 70.050 70.010,                   10
            70.090 70.040 / 70.050 70.010 / 70.000 70.020,                   -
            70.090 70.040 / 70.050 70.010 / 70.000 70.020001,                30
            70.020    70.000 / 70.050 70.010 / 70.010 70.050,                -
            70.020001 70.000 / 70.050 70.010 / 70.010 70.050,                30
            70.090 70.040 / 70.070 70.030 / 70.050 70.010,                   -
            70.040 70.090 / 70.030 70.070 / 70.010 70.050,                   -
            70.090 70.040 / 70.020 70.060,                                   -
            70.090 70.040 / 70.020 70.060 / 70.050 70.010 / 70.010 70.050,   -
            70.090 70.040 / 70.020 70.060 / 70.010 70.010,                   -
            70.090 70.040 / 70.020 -      / 70.050 70.010 / 70.010 70.050,   40
            70.090 70.040 / 70.020 -      / 70.050 70.010,                   -
            70.090 / 70.020 / 70.050,                                        -
            """)
    void theOneRowAgainstAllOthersIsQueried(String rows, String depth) {
        assertThat(depth(grid(rows))).isEqualTo(depth);
    }

    @Test
    void theRowAndThoseAgainstItAreNamedAndWhatDoesNotTellIsNot() {
        Grid grid = grid("70.090 70.040 70.060 / 70.020 70.060 70.060 / 70.050 70.010 70.060 / 70.010 70.010 70.010");

        assertThat(OpposedRow.in(grid))
                .contains(Query.of(
                        Query.Kind.OPPOSED,
                        List.of(reading(20, Axis.THRUST, "70.020"), reading(20, Axis.PIN, "70.060")),
                        List.of(
                                reading(10, Axis.THRUST, "70.090"),
                                reading(10, Axis.PIN, "70.040"),
                                reading(30, Axis.THRUST, "70.050"),
                                reading(30, Axis.PIN, "70.010"))));
    }

    @Test
    void thePinMayBeReadBeforeTheThrustFaces() {
        assertThat(depth(columns(List.of(9, -9, 9), Axis.PIN, Axis.THRUST))).isEqualTo("20");
    }

    @Property
    boolean atMostOneRowIsOpposedAndExchangingAllColumnsChangesNothing(
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = -3, max = 3) Integer> sides) {
        Grid grid = columns(sides, Axis.THRUST, Axis.PIN);
        Grid exchanged = columns(sides.stream().map(side -> -side).toList(), Axis.THRUST, Axis.PIN);
        Grid written = columns(sides.stream().map(side -> -side).toList(), Axis.PIN, Axis.THRUST);

        return depth(exchanged).equals(depth(grid)) && depth(written).equals(depth(grid));
    }

    @Property
    boolean withoutThrustOrPinNothingIsAsked(
            @ForAll @Size(min = 3, max = 6) List<@IntRange(min = -9, max = 9) Integer> sides) {
        return OpposedRow.in(columns(sides, Axis.THRUST, new Axis(89))).isEmpty()
                && OpposedRow.in(columns(sides, new Axis(1), Axis.PIN)).isEmpty();
    }

    /** The first column is wider by so many hundredths of a millimetre. */
    private static Grid columns(List<Integer> sides, Axis first, Axis second) {
        List<List<Optional<Length>>> rows = sides.stream()
                .map(side -> List.of(
                        Optional.of(Length.ofMicrometres(70_100 + 10L * side)),
                        Optional.of(Length.ofMicrometres(70_100))))
                .toList();
        return new Grid(Grids.depths(rows.size()), List.of(first, second), rows);
    }

    private static String depth(Grid grid) {
        return OpposedRow.in(grid)
                .map(query -> query.readings().get(0).depth().nanometres() / 1_000_000)
                .map(String::valueOf)
                .orElse("-");
    }

    private static Reading reading(int depth, Axis axis, String diameter) {
        return new Reading(Length.ofMicrometres(depth * 1_000L), axis, Length.parseMillimetres(diameter));
    }
}
