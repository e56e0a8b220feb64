package org.borewright.catalog.load.sheet;

import java.util.Optional;

/** Reads the cells of one line, and complains of those that cannot stand. */
public final class Cells {

    private final Sheet sheet;
    private final Sheet.Line line;
    private final Complaints complaints;

    public Cells(Sheet sheet, Sheet.Line line, Complaints complaints) {
        this.sheet = sheet;
        this.line = line;
        this.complaints = complaints;
    }

    /** The cell; empty, with a complaint, where it is empty or cannot stand. A missing column is told once, not for every line. */
    public <T> Optional<T> needed(String column, CellType<T> type) {
        if (line.has(column) && line.cell(column).isEmpty()) {
            bad(column, "is empty; a value is needed");
        }
        return maybe(column, type);
    }

    /** The cell; empty where it is empty, or, with a complaint, where it cannot stand. */
    public <T> Optional<T> maybe(String column, CellType<T> type) {
        String text = line.cell(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(type.read(text));
        } catch (IllegalArgumentException unfit) {
            bad(column, String.valueOf(unfit.getMessage()));
            return Optional.empty();
        }
    }

    /** Complains of a cell. */
    public void bad(String column, String reason) {
        complaints.cell(sheet, line, column, reason);
    }
}
