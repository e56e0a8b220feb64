package org.borewright.catalog.load.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.borewright.catalog.load.sheet.CellType;
import org.borewright.catalog.load.sheet.Cells;
import org.borewright.catalog.load.sheet.Complaints;
import org.borewright.catalog.load.sheet.Sheet;
import org.borewright.catalog.load.sheet.SheetRule;
import org.borewright.catalog.load.sheet.Sheets;
import org.borewright.catalog.store.row.CatalogRow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * What a file holds: its columns, in the order of the README of catalog-data, each with the way it is read and where it goes, and what
 * its lines owe each other and other files.
 *
 * @param <R> the row that a line becomes
 */
public final class Table<R extends CatalogRow> {

    private final String file;
    private final Supplier<R> blank;
    private final List<Column<R>> columns = new ArrayList<>();
    private final List<SheetRule> rules = new ArrayList<>();

    private Table(String file, Supplier<R> blank) {
        this.file = file;
        this.blank = blank;
    }

    static <R extends CatalogRow> Table<R> of(String file, Supplier<R> blank) {
        return new Table<>(file, blank);
    }

    <T> Table<R> needed(String name, CellType<T> type, BiConsumer<R, T> into) {
        return column(Column.needed(name, type, into));
    }

    <T> Table<R> maybe(String name, CellType<T> type, BiConsumer<R, T> into) {
        return column(Column.maybe(name, type, into));
    }

    Table<R> limits(String name, CellType<Length> type, BiConsumer<R, Limits> into) {
        return column(Column.limits(name, type, into));
    }

    Table<R> column(Column<R> column) {
        columns.add(column);
        return this;
    }

    Table<R> rule(SheetRule rule) {
        rules.add(rule);
        return this;
    }

    /** The name of the file. */
    public String file() {
        return file;
    }

    /** The row that a line becomes. */
    public Class<? extends CatalogRow> kind() {
        return blank.get().getClass();
    }

    /** The names of its columns, in their order. */
    public List<String> columnNames() {
        return columns.stream().flatMap(column -> column.names().stream()).toList();
    }

    /** What its lines owe, as listed in the README of the catalogue. */
    List<String> duties() {
        return rules.stream().map(SheetRule::words).toList();
    }

    /** The rows of the lines that can be read. */
    public List<R> rows(Sheet sheet, Complaints complaints) {
        List<R> rows = new ArrayList<>();
        for (Sheet.Line line : sheet.lines()) {
            R row = blank.get();
            row.line = line.number();
            Cells cells = new Cells(sheet, line, complaints);
            columns.forEach(column -> column.reading().accept(cells, row));
            rows.add(row);
        }
        return rows;
    }

    /** Whether its lines are about one engine each, and not about the shop or the whole catalogue. */
    public boolean isOfEngines() {
        return columnNames().stream().anyMatch(Sheets.TO_ENGINE::contains);
    }

    /** Complains of lines that owe something to each other or to another file. */
    public void check(Sheets all, Complaints complaints) {
        if (all.of(file).isWhole()) {
            rules.forEach(rule -> rule.check(all.of(file), all, complaints));
        }
    }
}
