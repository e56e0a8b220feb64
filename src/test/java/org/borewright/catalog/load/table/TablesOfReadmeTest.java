package org.borewright.catalog.load.table;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.borewright.catalog.load.CatalogReadme;
import org.borewright.catalog.load.sheet.BadCell;
import org.borewright.catalog.load.sheet.Complaints;
import org.borewright.catalog.load.sheet.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The README of the catalogue and the loader agree on columns, words, ranges, what may be empty, and what lines owe each other: each cell
 * is read as the loader reads it, and what the loader says of it is what the README says.
 */
class TablesOfReadmeTest {

    private static final String MAY_BE_EMPTY = "may be empty";
    private static final Pattern FILE = Pattern.compile("([a-z_]+\\.csv)");
    private static final Pattern WORDS = Pattern.compile("is none of (.*)");
    private static final Pattern RANGE = Pattern.compile("is outside (\\S+) to (\\S+)( mm)?");

    /** A column of the README, with what stands under its unit and range. */
    private record Listed(String file, String column, String form) {

        @Override
        public String toString() {
            return file + ", " + column;
        }
    }

    static List<Listed> listed() {
        List<Listed> listed = new ArrayList<>();
        String file = "";
        for (String line : CatalogReadme.lines()) {
            Matcher named = FILE.matcher(line);
            if (line.startsWith("## ") || line.matches("`[a-z_]+\\.csv`.*:")) {
                file = named.find() ? named.group() : "";
            } else if (!file.isEmpty() && line.startsWith("| ") && !line.startsWith("| column ")) {
                List<String> cells = CatalogReadme.cells(line);
                for (String column : cells.get(0).split(", ", -1)) {
                    listed.add(new Listed(file, column, cells.get(1)));
                }
            }
        }
        return listed;
    }

    private static Stream<Table<?>> tables() {
        return Stream.concat(Tables.fit().stream(), Tables.offers().stream());
    }

    @Test
    void readmeAndLoaderNameTheSameColumnsInTheSameOrder() {
        Map<String, List<String>> read = new LinkedHashMap<>();
        tables().forEach(table -> read.put(table.file(), table.columnNames()));

        assertThat(listed().stream().collect(groupingBy(Listed::file, mapping(Listed::column, toList()))))
                .isEqualTo(read);
    }

    @ParameterizedTest
    @MethodSource("listed")
    void readmeSaysWhatMayBeEmpty(Listed column) {
        assertThat(said(column, "").isEmpty()).isEqualTo(column.form().contains(MAY_BE_EMPTY));
    }

    /** A length without a range in the README has the one that is told at its head. */
    @ParameterizedTest
    @MethodSource("listed")
    void readmeStatesWordsAndRangeAsTheLoaderTellsThem(Listed column) {
        String stated = column.form().replaceAll("(, )?" + MAY_BE_EMPTY, "");
        Optional<Matcher> words = found(WORDS, column, "~");
        Optional<Matcher> range = found(RANGE, column, "-9999")
                .or(() -> found(RANGE, column, "-99999"))
                .or(() -> found(RANGE, column, "1999-12-31"));
        if (words.isPresent()) {
            assertThat(stated).isEqualTo(words.get().group(1));
        } else if (range.isPresent()) {
            assertThat("mm".equals(stated) ? "mm, 0–10000" : stated)
                    .matches("(.*, )?%s–%s(, .*)?"
                            .formatted(range.get().group(1), range.get().group(2)));
        } else {
            assertThat(stated).matches("text|number|codes?(: .*)?|ISO 4217");
        }
    }

    @Test
    void readmeListsWhatLinesOweEachOther() {
        Map<String, List<String>> owed = new LinkedHashMap<>();
        CatalogReadme.table("### Lines of one file, and the lines they name")
                .forEach(row -> owed.put(row.get(0), List.of(row.get(1).split("; ", -1))));
        Map<String, List<String>> asked = new LinkedHashMap<>();
        tables().forEach(table -> asked.put(table.file(), table.duties()));

        assertThat(owed).isEqualTo(asked);
    }

    private static Optional<Matcher> found(Pattern pattern, Listed column, String text) {
        return said(column, text).stream()
                .map(BadCell::reason)
                .map(pattern::matcher)
                .filter(Matcher::matches)
                .findFirst();
    }

    /** What the loader says of one cell, alone on its line. */
    private static List<BadCell> said(Listed column, String text) {
        Complaints complaints = new Complaints();
        Sheet sheet = new Sheet(column.file(), true, List.of(new Sheet.Line(2, false, Map.of(column.column(), text))));
        tables().filter(table -> table.file().equals(column.file())).forEach(table -> table.rows(sheet, complaints));
        return complaints.inOrder().stream()
                .filter(bad -> bad.column().equals(column.column()))
                .toList();
    }
}
