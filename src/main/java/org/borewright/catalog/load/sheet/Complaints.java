package org.borewright.catalog.load.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Collects what is bad in all files, so that all of it is told at once. */
public final class Complaints {

    private final List<BadCell> all = new ArrayList<>();
    private final Set<Place> places = new HashSet<>();

    private record Place(String file, int line) {}

    void file(String file, String reason) {
        add(new BadCell(file, 0, "", "", reason));
    }

    void line(String file, int line, String value, String reason) {
        add(new BadCell(file, line, "", value, reason));
    }

    /** Complains of one cell of a line. */
    public void cell(Sheet sheet, Sheet.Line line, String column, String reason) {
        add(new BadCell(sheet.file(), line.number(), column, line.cell(column), reason));
    }

    void column(String file, String column, String reason) {
        add(new BadCell(file, 1, column, "", reason));
    }

    private void add(BadCell bad) {
        all.add(bad);
        places.add(new Place(bad.file(), bad.line()));
    }

    /** Whether nothing is bad so far. */
    public boolean none() {
        return all.isEmpty();
    }

    /** Whether anything is bad about a line. */
    public boolean against(String file, int line) {
        return places.contains(new Place(file, line));
    }

    /** In the order of files and lines; on one line in the order in which it was found. */
    public List<BadCell> inOrder() {
        return all.stream().sorted().distinct().toList();
    }
}
