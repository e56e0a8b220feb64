package org.borewright.catalog.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The README of the catalogue, by its headings and tables. */
public final class CatalogReadme {

    private static final Path FILE = Path.of("catalog-data/README.md");

    private CatalogReadme() {}

    /** Its lines. */
    public static List<String> lines() {
        try {
            return Files.readAllLines(FILE);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** The rows of the first table below a heading, each as its cells. */
    public static List<List<String>> table(String heading) {
        return lines().stream()
                .dropWhile(line -> !line.equals(heading))
                .dropWhile(line -> !line.startsWith("|---"))
                .skip(1)
                .takeWhile(line -> line.startsWith("|"))
                .map(CatalogReadme::cells)
                .toList();
    }

    /** The cells of a row of a table. */
    public static List<String> cells(String row) {
        return Stream.of(row.split("\\|", -1)).skip(1).map(String::strip).toList();
    }
}
