package org.borewright.catalog.load;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One catalogue file as text.
 *
 * @param file its name
 * @param whole whether it could be read and has the columns it should have
 * @param lines those below the column names
 */
record Sheet(String file, boolean whole, List<Line> lines) {

    static Sheet unreadable(String file) {
        return new Sheet(file, false, List.of());
    }

    /** The line of a number. */
    Line line(int number) {
        return lines.stream()
                .filter(line -> line.number() == number)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("%s has no line %s".formatted(file, number)));
    }

    /** The first line on which these columns hold these values. */
    Optional<Line> find(List<String> columns, List<String> values) {
        return lines.stream().filter(line -> line.cells(columns).equals(values)).findFirst();
    }

    /**
     * One line.
     *
     * @param number from 1, the column names included
     * @param cells by the name of the column
     */
    record Line(int number, Map<String, String> cells) {

        /** The text of a cell; empty where there is none. */
        String cell(String column) {
            return cells.getOrDefault(column, "");
        }

        boolean has(String column) {
            return cells.containsKey(column);
        }

        List<String> cells(List<String> columns) {
            return columns.stream().map(this::cell).toList();
        }
    }
}
