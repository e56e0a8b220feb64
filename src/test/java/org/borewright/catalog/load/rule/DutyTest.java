package org.borewright.catalog.load.rule;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.borewright.catalog.load.CatalogReadme;
import org.junit.jupiter.api.Test;

/**
 * Every duty stands in the README of the catalogue with the cells it is told at, and each of those cells has a case: a bad row that is
 * refused in the words of the duty.
 */
class DutyTest {

    private static final Path CASES = Path.of("src/test/resources/catalog/load");

    /** A case: the cell it is told at, and the reason. */
    private record Told(String cell, String reason) {}

    @Test
    void readmeListsEveryDutyWithTheCellsItIsToldAt() throws IOException {
        Map<String, Set<String>> listed = new LinkedHashMap<>();
        CatalogReadme.table("### What files owe each other")
                .forEach(row ->
                        listed.put(row.get(0), new TreeSet<>(List.of(row.get(1).split("; ", -1)))));

        assertThat(listed).containsExactlyEntriesOf(toldAt());
    }

    private static Map<String, Set<String>> toldAt() throws IOException {
        List<Told> told = Stream.concat(
                        cases("bad-cells.csv").map(cells -> new Told(cells[0] + ", " + cells[2], cells[4])),
                        cases("what-lines-owe.csv").map(cells -> new Told(cells[4] + ", " + cells[6], cells[8])))
                .toList();
        Map<String, Set<String>> cells = new LinkedHashMap<>();
        for (Duty duty : Duty.values()) {
            cells.put(
                    duty.title(),
                    told.stream()
                            .filter(one -> one.reason().matches(form(duty)))
                            .map(Told::cell)
                            .collect(toCollection(TreeSet::new)));
        }
        return cells;
    }

    private static Stream<String[]> cases(String file) throws IOException {
        return Files.readAllLines(CASES.resolve(file)).stream().skip(1).map(line -> line.split("\\|", -1));
    }

    /** No reason has anything in it that a pattern would take for more than itself. */
    private static String form(Duty duty) {
        return duty.reason(".+", ".+");
    }
}
