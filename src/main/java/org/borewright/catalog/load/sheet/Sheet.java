package org.borewright.catalog.load.sheet;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One catalogue file as text. */
public final class Sheet {

    private final String file;
    private final boolean whole;
    private final List<Line> lines;
    private final List<Line> all;
    private final Map<Integer, Line> byNumber;
    private final Map<List<String>, Map<List<String>, List<Line>>> byCells = new HashMap<>();

    /**
     * A file that could be read.
     *
     * @param file its name
     * @param whole whether it has the columns it should have
     * @param all the lines below the column names
     */
    public Sheet(String file, boolean whole, List<Line> all) {
        this.file = file;
        this.whole = whole;
        this.all = List.copyOf(all);
        this.lines = all.stream().filter(line -> !line.torn()).toList();
        this.byNumber = all.stream().collect(toMap(Line::number, identity()));
    }

    static Sheet unreadable(String file) {
        return new Sheet(file, false, List.of());
    }

    /** Its name. */
    public String file() {
        return file;
    }

    /** Whether it could be read and has the columns it should have. */
    public boolean isWhole() {
        return whole;
    }

    /** The lines that have a cell for every column. */
    public List<Line> lines() {
        return lines;
    }

    /** Every line: what stands in a torn one is known too, so that it does not make others refer to nothing. */
    public List<Line> all() {
        return all;
    }

    /** The line of a number. */
    public Line line(int number) {
        return Optional.ofNullable(byNumber.get(number))
                .orElseThrow(() -> new IllegalArgumentException("%s has no line %s".formatted(file, number)));
    }

    /** The first line on which these columns hold these values. */
    public Optional<Line> find(List<String> columns, List<String> values) {
        return all(columns, values).stream().findFirst();
    }

    /** The lines on which these columns hold these values. */
    public List<Line> all(List<String> columns, List<String> values) {
        return byCells.computeIfAbsent(columns, these -> all.stream().collect(groupingBy(line -> line.cells(these))))
                .getOrDefault(values, List.of());
    }

    /**
     * One line.
     *
     * @param number from 1, the column names included
     * @param torn whether it has more or fewer cells than there are columns
     * @param cells by the name of the column
     */
    public record Line(int number, boolean torn, Map<String, String> cells) {

        /** The text of a cell; empty where there is none. */
        public String cell(String column) {
            return cells.getOrDefault(column, "");
        }

        /** Whether the line has a cell in this column, be it an empty one. */
        public boolean has(String column) {
            return cells.containsKey(column);
        }

        /** The texts of several cells. */
        public List<String> cells(List<String> columns) {
            return columns.stream().map(this::cell).toList();
        }
    }
}
