package org.borewright.measure.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.borewright.measure.Length;

/**
 * Diameters of one hole at several depths along several axes. A cell that could not be measured (over a port) is empty.
 *
 * @param depths from the deck, rising; at least one
 * @param axes in the order of the columns; at least one, all different
 * @param rows one row per depth, one cell per axis; at least one cell in all holds a reading
 */
public record Grid(List<Length> depths, List<Axis> axes, List<List<Optional<Length>>> rows) implements Survey {

    /** @throws IllegalArgumentException if the rows do not match depths and axes, depths do not rise, or no cell was read */
    public Grid {
        depths = List.copyOf(depths);
        axes = List.copyOf(axes);
        rows = copied(rows, axes.size());
        if (rows.size() != depths.size()) {
            throw new IllegalArgumentException("the rows do not match the depths and axes");
        }
        if (axes.stream().distinct().count() != axes.size()) {
            throw new IllegalArgumentException("an axis is named twice");
        }
        for (int i = 1; i < depths.size(); i++) {
            if (!depths.get(i - 1).isLessThan(depths.get(i))) {
                throw new IllegalArgumentException(
                        String.format(Locale.ROOT, "depth %s does not lie below the one before", depths.get(i)));
            }
        }
        if (!holdsAReading(rows)) {
            throw new IllegalArgumentException("no cell holds a reading");
        }
    }

    private static List<List<Optional<Length>>> copied(List<List<Optional<Length>>> rows, int columns) {
        List<List<Optional<Length>>> copies = new ArrayList<>(rows.size());
        for (List<Optional<Length>> row : rows) {
            if (row.size() != columns) {
                throw new IllegalArgumentException("the rows do not match the depths and axes");
            }
            copies.add(List.copyOf(row));
        }
        return List.copyOf(copies);
    }

    private static boolean holdsAReading(List<List<Optional<Length>>> rows) {
        for (List<Optional<Length>> row : rows) {
            for (Optional<Length> cell : row) {
                if (cell.isPresent()) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * What was read at one place; empty where nothing could be.
     *
     * @param depth which of the depths, from 0
     * @param axis which of the axes, from 0
     */
    public Optional<Reading> reading(int depth, int axis) {
        return rows.get(depth).get(axis).map(diameter -> new Reading(depths.get(depth), axes.get(axis), diameter));
    }

    @Override
    public List<Length> readings() {
        List<Length> readings = new ArrayList<>(depths.size() * axes.size());
        rows.forEach(row -> row.forEach(cell -> cell.ifPresent(readings::add)));
        return readings;
    }

    /** The readings along one axis, from the deck down. */
    List<Length> profile(int axis) {
        List<Length> profile = new ArrayList<>(depths.size());
        rows.forEach(row -> row.get(axis).ifPresent(profile::add));
        return profile;
    }

    /** The readings along each axis that has two at the least, from the deck down. */
    public List<List<Length>> profiles() {
        return IntStream.range(0, axes.size())
                .mapToObj(this::profile)
                .filter(profile -> profile.size() > 1)
                .toList();
    }

    /** The readings at one depth. */
    List<Length> section(int depth) {
        List<Length> section = new ArrayList<>(axes.size());
        rows.get(depth).forEach(cell -> cell.ifPresent(section::add));
        return section;
    }

    /**
     * The largest diameter the hole can have at a depth: of the readings at the nearest measured depth above and below it, so
     * that a defect between two rows is never judged on the smaller one. Above the first and below the last nothing was read, and of all
     * readings the largest counts. A row over a port, without a reading, is no measured depth.
     */
    @Override
    public Optional<Length> largestNear(Length depth) {
        return rowsNear(depth)
                .flatMap(row -> rows.get(row).stream())
                .flatMap(Optional::stream)
                .max(Length::compareTo);
    }

    @Override
    public Grid mapNear(Length depth, UnaryOperator<Length> change) {
        List<Integer> near = rowsNear(depth).toList();
        List<List<Optional<Length>>> changed = new ArrayList<>(rows.size());
        for (List<Optional<Length>> row : rows) {
            changed.add(near.contains(changed.size()) ? changed(row, change) : row);
        }
        return new Grid(depths, axes, changed);
    }

    /** The nearest measured rows above and below a depth, each once or, where one lies on it, that one twice; all where one is wanting. */
    private Stream<Integer> rowsNear(Length depth) {
        Optional<Integer> above =
                measuredRows().filter(row -> !depths.get(row).isMoreThan(depth)).reduce((first, later) -> later);
        Optional<Integer> below =
                measuredRows().filter(row -> !depths.get(row).isLessThan(depth)).findFirst();
        return above.isPresent() && below.isPresent() ? Stream.of(above.get(), below.get()) : measuredRows();
    }

    /** The depths that were read along two axes, so many degrees apart at the least. */
    public List<Length> depthsReadAcross(int degrees) {
        List<Length> across = new ArrayList<>(depths.size());
        for (int depth = 0; depth < depths.size(); depth++) {
            if (isReadAcross(rows.get(depth), degrees)) {
                across.add(depths.get(depth));
            }
        }
        return across;
    }

    private boolean isReadAcross(List<Optional<Length>> row, int degrees) {
        for (int one = 0; one < row.size(); one++) {
            for (int other = one + 1; other < row.size(); other++) {
                boolean areRead = row.get(one).isPresent() && row.get(other).isPresent();
                if (areRead && axes.get(one).degreesFrom(axes.get(other)) >= degrees) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The largest diameter read along an axis from a depth on downward; empty when none was. */
    public Optional<Length> largestAlong(Axis axis, Length from) {
        int column = axes.indexOf(axis);
        return column < 0
                ? Optional.empty()
                : IntStream.range(0, rows.size())
                        .filter(row -> !depths.get(row).isLessThan(from))
                        .mapToObj(row -> rows.get(row).get(column))
                        .flatMap(Optional::stream)
                        .max(Length::compareTo);
    }

    /** How far down the last reading along an axis lies that was taken at a depth or above it; empty where none was. */
    public Optional<Length> lastRead(Axis axis, Length at) {
        int column = axes.indexOf(axis);
        return column < 0
                ? Optional.empty()
                : measuredRows()
                        .filter(row -> rows.get(row).get(column).isPresent())
                        .map(depths::get)
                        .filter(depth -> !depth.isMoreThan(at))
                        .reduce((first, later) -> later);
    }

    /** The rows that hold a reading, from the deck down. */
    private Stream<Integer> measuredRows() {
        return IntStream.range(0, rows.size())
                .filter(row -> rows.get(row).stream().anyMatch(Optional::isPresent))
                .boxed();
    }

    @Override
    public Grid map(UnaryOperator<Length> change) {
        List<List<Optional<Length>>> changed = new ArrayList<>(rows.size());
        rows.forEach(row -> changed.add(changed(row, change)));
        return new Grid(depths, axes, changed);
    }

    private static List<Optional<Length>> changed(List<Optional<Length>> row, UnaryOperator<Length> change) {
        List<Optional<Length>> cells = new ArrayList<>(row.size());
        row.forEach(cell -> cells.add(cell.map(change)));
        return cells;
    }
}
