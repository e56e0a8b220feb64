package org.borewright.catalog.load.sheet;

import static java.util.Comparator.comparing;

import java.util.Comparator;

/**
 * Something in a catalogue file that cannot stand.
 *
 * @param file the name of the file
 * @param line from 1, the line of the column names; 0 where the file itself is meant
 * @param column empty where the whole line is meant
 * @param value as it stands there; empty where there is none
 * @param reason why it cannot stand
 */
public record BadCell(String file, int line, String column, String value, String reason)
        implements Comparable<BadCell> {

    private static final int LONGEST_SHOWN = 80;

    private static final Comparator<BadCell> BY_PLACE = comparing(BadCell::file).thenComparingInt(BadCell::line);

    /** By file and line. */
    @Override
    public int compareTo(BadCell other) {
        return BY_PLACE.compare(this, other);
    }

    /** As reported, such as {@code pistons.csv line 12, size "+0.25": ...}. */
    @Override
    public String toString() {
        return file
                + (line == 0 ? "" : " line " + line)
                + (column.isEmpty() ? "" : ", " + column)
                + (value.isEmpty() ? "" : " \"" + shown() + "\"")
                + ": "
                + reason;
    }

    private String shown() {
        String printable = value.replaceAll("\\p{Cntrl}", " ");
        return printable.length() <= LONGEST_SHOWN ? printable : printable.substring(0, LONGEST_SHOWN) + " ...";
    }
}
