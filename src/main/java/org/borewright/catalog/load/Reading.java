package org.borewright.catalog.load;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.borewright.catalog.Revision;
import org.borewright.catalog.load.rule.Examination;
import org.borewright.catalog.load.rule.NumberRules;
import org.borewright.catalog.load.rule.RowRules;
import org.borewright.catalog.load.sense.Objection;
import org.borewright.catalog.load.sense.PhysicalSense;
import org.borewright.catalog.load.sheet.BadCell;
import org.borewright.catalog.load.sheet.Complaints;
import org.borewright.catalog.load.sheet.Sheet;
import org.borewright.catalog.load.sheet.SheetReader;
import org.borewright.catalog.load.sheet.Sheets;
import org.borewright.catalog.load.table.Table;
import org.borewright.catalog.load.table.Tables;
import org.borewright.catalog.store.CatalogRows;
import org.borewright.catalog.store.Stocktaking;
import org.borewright.catalog.store.row.CatalogRow;

/** One reading of a folder: text, rows, what lines owe each other, physical sense; in that order, and all complaints together. */
final class Reading {

    private final List<Table<?>> tables =
            Stream.concat(Tables.fit().stream(), Tables.offers().stream()).toList();
    private final Map<Class<? extends CatalogRow>, String> files =
            tables.stream().collect(toMap(Table::kind, Table::file));
    private final Set<String> ofEngines =
            tables.stream().filter(Table::isOfEngines).map(Table::file).collect(toSet());
    private final Complaints complaints = new Complaints();
    private final Sheets sheets;
    private final List<CatalogRow> rows = new ArrayList<>();

    Reading(Path folder) {
        sheets = new Sheets(tables.stream()
                .map(table -> new SheetReader(table.file(), table.columnNames(), complaints).read(folder))
                .toList());
    }

    /** Whether every file could be read as text, and together they say what a revision says. */
    boolean says(Revision revision) {
        return complaints.none() && Fingerprint.of(sheets).equals(revision);
    }

    Delivery delivery() {
        for (Table<?> table : tables) {
            rows.addAll(table.rows(sheets.of(table.file()), complaints));
            table.check(sheets, complaints);
        }
        NumberRules.check(sheets, complaints);
        Examination examination = new Examination(sheets, readable(), files, complaints);
        RowRules.check(examination);
        List<String> unjudged = unjudged();
        judge(unjudged);
        return new Delivery(readable(), Fingerprint.of(sheets), complaints.inOrder(), unjudged);
    }

    private CatalogRows readable() {
        return CatalogRows.of(rows.stream().filter(this::isReadable).toList());
    }

    private boolean isReadable(CatalogRow row) {
        String file = fileOf(row);
        return sheets.of(file).isWhole() && !complaints.against(file, row.line);
    }

    private String fileOf(CatalogRow row) {
        return files.getOrDefault(row.getClass(), "");
    }

    /** The engines of which a line is bad; all, where it cannot be told which engine a bad line is about. */
    private List<String> unjudged() {
        Set<String> engines = new TreeSet<>();
        for (BadCell bad : complaints.inOrder()) {
            if (ofEngines.contains(bad.file())) {
                engineOf(bad).ifPresentOrElse(engines::add, () -> engines.addAll(allEngines()));
            }
        }
        return List.copyOf(engines);
    }

    private Optional<String> engineOf(BadCell bad) {
        return bad.line() <= 1
                ? Optional.empty()
                : sheets.engineOf(sheets.of(bad.file()).line(bad.line()));
    }

    private List<String> allEngines() {
        return sheets.of("engines.csv").all().stream()
                .map(line -> line.cell("engine"))
                .toList();
    }

    /** Holds the parts of every engine against each other on the very shelf that a match would see. */
    private void judge(List<String> unjudged) {
        CatalogRows judged = CatalogRows.of(
                rows.stream().filter(row -> isJudged(row, unjudged)).toList());
        Stocktaking.of(judged, Fingerprint.of(sheets), Instant.EPOCH).shelves().values().stream()
                .flatMap(PhysicalSense::objections)
                .forEach(this::complain);
    }

    private boolean isJudged(CatalogRow row, List<String> unjudged) {
        if (!isReadable(row)) {
            return false;
        }
        Optional<String> engine = sheets.engineOf(sheets.of(fileOf(row)).line(row.line));
        return engine.map(code -> !unjudged.contains(code)).orElseGet(() -> !ofEngines.contains(fileOf(row)));
    }

    private void complain(Objection objection) {
        Sheet sheet = sheets.of(objection.place().file());
        Sheet.Line line = sheet.find(
                        objection.place().columns(), objection.place().values())
                .orElseThrow();
        complaints.cell(sheet, line, objection.column(), objection.reason());
    }
}
