package org.borewright.catalog.load.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The README of the catalogue names the columns that the loader reads, in the same order. */
class ColumnsOfReadmeTest {

    private static final Pattern FILE = Pattern.compile("([a-z_]+\\.csv)");
    private static final Pattern ROW = Pattern.compile("\\| ([^|]+) \\|(?: ([^|]*) \\|)?.*");
    private static final List<String> HEADS = List.of("column", "file", "---");
    private static final Pattern NAME = Pattern.compile("[A-Za-z_0-9]+");

    @Test
    void readmeAndLoaderNameTheSameColumns() throws IOException {
        Map<String, List<String>> read = new TreeMap<>();
        Stream.concat(Tables.fit().stream(), Tables.offers().stream())
                .forEach(table -> read.put(table.file(), table.columnNames()));

        assertThat(columnsOfReadme()).isEqualTo(read);
    }

    private static Map<String, List<String>> columnsOfReadme() throws IOException {
        Map<String, List<String>> columns = new TreeMap<>();
        String file = "";
        for (String line : Files.readAllLines(Path.of("catalog-data/README.md"))) {
            Matcher row = ROW.matcher(line);
            if (line.startsWith("## ") || line.matches("`[a-z_]+\\.csv`.*:")) {
                file = first(FILE, line);
            } else if (row.matches() && FILE.matcher(row.group(1)).matches()) {
                columns.put(row.group(1), names(beforeTheFirstSentenceEnds(row.group(2))));
            } else if (row.matches() && !file.isEmpty() && !HEADS.contains(row.group(1))) {
                columns.computeIfAbsent(file, any -> new ArrayList<>()).addAll(names(row.group(1)));
            }
        }
        return columns;
    }

    /** Names of columns in a row of the README, without what stands in brackets behind them. */
    private static List<String> names(String text) {
        return Stream.of(text.replaceAll("\\([^)]*\\)", "").split(","))
                .map(name -> first(NAME, name))
                .toList();
    }

    private static String beforeTheFirstSentenceEnds(String text) {
        return text.replaceAll("\\. .*", "");
    }

    private static String first(Pattern pattern, String text) {
        Matcher found = pattern.matcher(text);
        return found.find() ? found.group() : "";
    }
}
