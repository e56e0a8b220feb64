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
        List<List<Optional<Length>>> cells = Arrays.stream(rows.split("/"))
                .map(row ->
                        Arrays.stream(row.strip().split(" +")).map(Grids::cell).toList())
                .toList();
        return new Grid(depths(cells.size()), AXES.subList(0, cells.get(0).size()), cells);
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
