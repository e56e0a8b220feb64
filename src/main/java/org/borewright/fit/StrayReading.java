package org.borewright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.Query;
import org.borewright.measure.survey.Reading;

/**
 * A reading of a grid that lies far from every reading beside it. Beside it are the nearest reading above and below on its axis, and the
 * nearest on either side of its axis at its depth, a place over a port passed over.
 *
 * <p>Far is both: more than 0.15 mm beyond all of them, and more than they differ among themselves; at either limit it is not far. At least
 * one of them must lie on another axis and one at another depth. For the ridge at the top, a barrel or a bell-mouth leaves the neighbours on
 * one axis, but goes round the hole; an oval leaves those at one depth, but goes down the stroke. Source: common practice.
 */
public final class StrayReading {

    /** With more than so many the whole grid is read again anyway. */
    private static final int MOST_NAMED = 6;

    private final Grid grid;
    private final int[] around;

    private StrayReading(Grid grid) {
        this.grid = grid;
        this.around = IntStream.range(0, grid.axes().size())
                .boxed()
                .sorted((a, b) -> Integer.compare(
                        grid.axes().get(a).degrees(), grid.axes().get(b).degrees()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** A query for each stray reading, from the deck down, the first six of a grid. */
    public static List<Query> in(Grid grid) {
        boolean oneCanBeFar = Limits.around(grid.readings()).width().isMoreThan(CommonPractice.farFromNeighbours());
        return oneCanBeFar ? new StrayReading(grid).all() : List.of();
    }

    private List<Query> all() {
        return IntStream.range(0, grid.depths().size())
                .boxed()
                .flatMap(depth -> IntStream.range(0, around.length).mapToObj(place -> query(depth, place)))
                .flatMap(Optional::stream)
                .limit(MOST_NAMED)
                .toList();
    }

    private Optional<Query> query(int depth, int place) {
        List<Reading> onAxis = onAxis(depth, around[place]);
        List<Reading> atDepth = atDepth(depth, place);
        if (onAxis.isEmpty() || atDepth.isEmpty()) {
            return Optional.empty();
        }
        List<Reading> beside = Stream.concat(onAxis.stream(), atDepth.stream()).toList();
        return grid.reading(depth, around[place])
                .filter(reading -> isFar(reading, beside))
                .map(reading -> Query.of(Query.Kind.STRAY, List.of(reading), beside));
    }

    private static boolean isFar(Reading reading, List<Reading> beside) {
        Limits range = Limits.around(beside.stream().map(Reading::diameter).toList());
        Length diameter = reading.diameter();
        Length beyond = diameter.minus(range.greatest()).max(range.least().minus(diameter));
        return beyond.isMoreThan(CommonPractice.farFromNeighbours()) && beyond.isMoreThan(range.width());
    }

    private List<Reading> onAxis(int depth, int axis) {
        return nearest(
                IntStream.iterate(depth - 1, row -> row >= 0, row -> row - 1).mapToObj(row -> grid.reading(row, axis)),
                IntStream.range(depth + 1, grid.depths().size()).mapToObj(row -> grid.reading(row, axis)));
    }

    /** An axis turned by 180° is the same axis, so the last and the first lie side by side. */
    private List<Reading> atDepth(int depth, int place) {
        int axes = around.length;
        return nearest(
                IntStream.range(1, axes).mapToObj(on -> grid.reading(depth, around[(place - on + axes) % axes])),
                IntStream.range(1, axes).mapToObj(on -> grid.reading(depth, around[(place + on) % axes])));
    }

    /** The first reading met on each of two ways; once where both meet the same. */
    private static List<Reading> nearest(Stream<Optional<Reading>> oneWay, Stream<Optional<Reading>> otherWay) {
        List<Reading> nearest = new ArrayList<>(2);
        oneWay.flatMap(Optional::stream).findFirst().ifPresent(nearest::add);
        otherWay.flatMap(Optional::stream)
                .findFirst()
                .filter(reading -> !nearest.contains(reading))
                .ifPresent(nearest::add);
        return nearest;
    }
}
