package org.borewright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.measure.survey.Grids.grid;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Grids;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Reading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrayReadingTest {

    private static final List<Axis> ALL_ROUND = List.of(Axis.THRUST, new Axis(45), Axis.PIN, new Axis(135));

    /** Rows from the deck down, thrust, pin, then 45°; what is queried as depth and axis. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            70.010 70.010 / 70.160    70.010 / 70.010 70.010,    ''
            70.010 70.010 / 70.160001 70.010 / 70.010 70.010,    20 thrust
            70.200 70.200 / 70.200 70.050    / 70.200 70.200,    ''
            70.200 70.200 / 70.200 70.049999 / 70.200 70.200,    20 pin
            70.410    70.110 / 70.010 70.010,                    10 thrust
            70.010 70.010 / 70.410    70.110 / 70.210 70.210,    ''
            70.010 70.010 / 70.410001 70.110 / 70.210 70.210,    20 thrust
            70.110 70.050 / 70.410    70.030 / 70.010 70.005,    20 thrust
            70.110 70.410 / 70.060    70.030 / 70.010 70.005,    10 pin
            70.010 70.010 / 70.010 70.010 / 70.310 70.010,       30 thrust
            70.310 70.010 / 70.010 70.010 / 70.010 70.310,       10 thrust + 30 pin
            70.010 70.010 70.010 / 70.010 70.010 70.310,         20 45°
            """)
    void whatLiesFarBeyondAllBesideItIsQueried(String rows, String queried) {
        assertThat(places(grid(rows))).isEqualTo(queried);
    }

    /** Of two axes the neighbour at the depth is the same on either side, and is told once. */
    @Test
    void whatLiesBesideIsToldOnce() {
        Query query = StrayReading.in(grid("70.010 70.011 / 70.310 70.012 / 70.013 70.014"))
                .get(0);

        assertThat(query.beside().stream().map(Reading::diameter))
                .containsExactlyInAnyOrder(
                        Length.parseMillimetres("70.010"),
                        Length.parseMillimetres("70.012"),
                        Length.parseMillimetres("70.013"));
    }

    /** No slip among them: heavy wear as the trade draws it. */
    @ParameterizedTest(name = "{1}")
    @CsvSource(textBlock = """
            70.000 70.000 / 70.350 70.300 / 70.200 70.150 / 70.050 70.030, a ridge above the ring travel
            70.000 70.000 / 70.350 70.300 / 70.300 70.250 / 70.000 70.000, ridges at both ends
            70.010 70.010 / 70.300 70.260 / 70.010 70.010,                 a barrel
            70.300 70.260 / 70.010 70.010 / 70.300 70.260,                 a waist
            70.000 70.000 / 70.010 70.005 / 70.300 70.280,                 a bell-mouth
            70.300 70.280 / 70.010 70.005 / 70.000 70.000,                 a mouth worn at the top
            70.300 70.000 / 70.290 70.000 / 70.280 70.000,                 an oval over the whole stroke
            70.300 70.000 70.000,                                          an oval at the only depth
            70.000 / 70.300 / 70.010,                                      a barrel along the only axis
            70.010 70.010 / 70.400 - / 70.010 70.010,                      nothing at the same depth to hold it against
            - 70.010 / 70.400 70.010 / - 70.010,                           nothing on the same axis to hold it against
            70.400,                                                        a single reading
            """)
    void wearIsNotQueried(String rows, String pattern) {
        assertThat(StrayReading.in(grid(rows))).as(pattern).isEmpty();
    }

    @Test
    void besideItAreTheNearestOnItsAxisAndOnEitherSideAndPortsArePassedOver() {
        Grid ported = grid("70.010 70.011 70.012 / - - - / 70.013 70.400 70.014 / 70.015 70.016 70.017");

        assertThat(StrayReading.in(ported))
                .containsExactly(Query.of(
                        Query.Kind.STRAY,
                        List.of(reading(30, Axis.PIN, "70.400")),
                        List.of(
                                reading(10, Axis.PIN, "70.011"),
                                reading(40, Axis.PIN, "70.016"),
                                reading(30, new Axis(45), "70.014"),
                                reading(30, Axis.THRUST, "70.013"))));
    }

    /** 135° lies beside thrust as 45° does, and pin does not. */
    @Test
    void axesLieBesideEachOtherByTheirAngle() {
        Grid grid = allRound(List.of(0L, 0L, 0L, 0L, 300L, 0L, 300L, 0L, 0L, 0L, 0L, 0L));

        assertThat(places(grid)).isEqualTo("20 thrust + 20 pin");
    }

    @Test
    void ofManyTheFirstSixAreNamed() {
        Grid chessboard = grid("70.010 70.400 / 70.400 70.010 / 70.010 70.400 / 70.400 70.010");

        assertThat(places(chessboard)).isEqualTo("10 thrust + 10 pin + 20 thrust + 20 pin + 30 thrust + 30 pin");
    }

    @Property
    boolean theOrderInWhichTheAxesAreWrittenDoesNotMatter(
            @ForAll("micrometres") List<Long> cells, @ForAll("orders") List<Integer> order) {
        Grid grid = allRound(cells);
        Grid turned = new Grid(
                grid.depths(),
                order.stream().map(grid.axes()::get).toList(),
                grid.rows().stream()
                        .map(row -> order.stream().map(row::get).toList())
                        .toList());

        return queried(turned).equals(queried(grid));
    }

    @Property
    boolean whatIsFarStaysQueriedWhateverElseFarIsTyped(
            @ForAll @LongRange(min = 150_001, max = 500_000) long one,
            @ForAll @LongRange(min = 150_001, max = 500_000) long other) {
        return besides(one).equals(besides(-other)) && !besides(one).isEmpty();
    }

    private static List<List<Reading>> besides(long off) {
        Length typed = TWENTY_PIN.plus(Length.ofNanometres(off));
        Grid grid = grid("70.010 70.010 / 70.010 " + typed.toString().replace(" mm", "") + " / 70.010 70.010");
        return StrayReading.in(grid).stream().map(Query::beside).toList();
    }

    private static final Length TWENTY_PIN = Length.parseMillimetres("70.010");

    @Provide
    Arbitrary<List<Long>> micrometres() {
        return Arbitraries.longs().between(0, 300).list().ofSize(12);
    }

    @Provide
    Arbitrary<List<Integer>> orders() {
        return Arbitraries.shuffle(0, 1, 2, 3);
    }

    /** Rows of four axes all round, as micrometres over 70 mm. */
    private static Grid allRound(List<Long> cells) {
        List<List<Optional<Length>>> rows = IntStream.range(0, cells.size() / 4)
                .mapToObj(row -> cells.subList(4 * row, 4 * row + 4).stream()
                        .map(over -> Optional.of(Length.ofMicrometres(70_000 + over)))
                        .toList())
                .toList();
        return new Grid(Grids.depths(rows.size()), ALL_ROUND, rows);
    }

    private static Set<Reading> queried(Grid grid) {
        List<Query> queries = StrayReading.in(grid);
        assertThat(queries).allSatisfy(query -> assertThat(query.readings()).hasSize(1));
        Set<Reading> readings = new HashSet<>();
        queries.forEach(query -> readings.addAll(query.readings()));
        return Collections.unmodifiableSet(readings);
    }

    private static String places(Grid grid) {
        return StrayReading.in(grid).stream()
                .flatMap(query -> query.readings().stream())
                .map(reading -> String.format(
                        Locale.ROOT,
                        "%d %s",
                        reading.depth().nanometres() / 1_000_000,
                        reading.axis().label()))
                .collect(Collectors.joining(" + "));
    }

    private static Reading reading(int depth, Axis axis, String diameter) {
        return new Reading(Length.ofMicrometres(depth * 1_000L), axis, Length.parseMillimetres(diameter));
    }
}
