package org.borewright.catalog.load.rule;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.borewright.catalog.load.sheet.Complaints;
import org.borewright.catalog.load.sheet.Sheet;
import org.borewright.catalog.load.sheet.Sheets;
import org.borewright.catalog.store.CatalogRows;
import org.borewright.catalog.store.row.CatalogRow;

/**
 * What lines of different files are held against each other with: the files as text, and the rows of those lines in which every cell can
 * be read.
 *
 * @param sheets every file as text
 * @param rows of the lines without complaint so far
 * @param files the file of each kind of row
 * @param complaints where to tell what is bad
 */
public record Examination(
        Sheets sheets, CatalogRows rows, Map<Class<? extends CatalogRow>, String> files, Complaints complaints) {

    /** Complains of a cell in the line of a row; {@code owed} goes into the words of the duty. */
    void bad(CatalogRow row, String column, Duty duty, Object... owed) {
        Sheet sheet = sheet(row.getClass());
        complaints.cell(sheet, sheet.line(row.line), column, duty.reason(owed));
    }

    <R extends CatalogRow> List<R> rows(Class<R> kind) {
        return rows.of(kind);
    }

    <R extends CatalogRow> Map<String, List<R>> rows(Class<R> kind, Function<R, String> by) {
        return rows.by(by, kind);
    }

    /** Whether every line of a file that has this value in a column could be read, so that what it says together is known. */
    boolean isWhole(Class<? extends CatalogRow> kind, String column, String value) {
        Sheet sheet = sheet(kind);
        return sheet.isWhole()
                && sheet.all(List.of(column), List.of(value)).stream()
                        .noneMatch(line -> complaints.against(sheet.file(), line.number()));
    }

    private Sheet sheet(Class<? extends CatalogRow> kind) {
        return sheets.of(files.getOrDefault(kind, ""));
    }
}
