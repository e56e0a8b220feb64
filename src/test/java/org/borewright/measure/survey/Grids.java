package org.borewright.measure.survey;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.measure.Length;

/** Grids as a machinist writes them: rows from the deck down, parted by a slash; thrust, pin, then 45°; a dash over a port. */
public final class Grids {

    private static final List<Axis> AXES = List.of(Axis.THRUST, Axis.PIN, new Axis(45));

    private Grids() {}

    /** A grid at 10, 20, 30 … mm from the deck. */
    public static Grid grid(String rows) {
        return grid(rows, depths(rows.split("/").length));
    }

    /** A grid at the first of some depths. */
    public static Grid grid(String rows, List<Length> depths) {
        List<List<Optional<Length>>> cells = Arrays.stream(rows.split("/"))
                .map(row ->
                        Arrays.stream(row.strip().split(" +")).map(Grids::cell).toList())
                .toList();
        return new Grid(
                depths.subList(0, cells.size()), AXES.subList(0, cells.get(0).size()), cells);
    }

    /** Six readings: 10, 40 and 80 mm from the deck by thrust and pin, row by row. */
    public static Grid crosswise(List<Length> readings) {
        List<Optional<Length>> cells = readings.stream().map(Optional::of).toList();
        return new Grid(
                List.of(Length.ofMicrometres(10_000), Length.ofMicrometres(40_000), Length.ofMicrometres(80_000)),
                AXES.subList(0, 2),
                IntStream.range(0, 3)
                        .mapToObj(row -> cells.subList(2 * row, 2 * row + 2))
                        .toList());
    }

    /** So many depths: 10, 20, 30 … mm. */
    public static List<Length> depths(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(row -> Length.ofMicrometres(10_000L * row))
                .toList();
    }

    private static Optional<Length> cell(String text) {
        return text.equals("-") ? Optional.empty() : Optional.of(Length.parseMillimetres(text));
    }
}
