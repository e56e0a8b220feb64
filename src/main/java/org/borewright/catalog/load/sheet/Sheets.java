package org.borewright.catalog.load.sheet;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toMap;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** All files of a folder as text. */
public final class Sheets {

    /** The columns that lead to an engine. */
    public static final List<String> TO_ENGINE = List.of("engine", "design", "ring_set");

    private final Map<String, Sheet> byFile;

    /** The files of a folder. */
    public Sheets(List<Sheet> sheets) {
        byFile = sheets.stream().collect(toMap(Sheet::file, identity()));
    }

    /** A file; without lines where it could not be read. */
    public Sheet of(String file) {
        return byFile.getOrDefault(file, Sheet.unreadable(file));
    }

    /** The engine a line is about, through design and ring set; empty for a line of the shop or of the whole catalogue. */
    public Optional<String> engineOf(Sheet.Line line) {
        return Stream.of(
                        Optional.of(line.cell("engine")),
                        engineBy("piston_designs.csv", "design", line),
                        engineBy("ring_sets.csv", "ring_set", line))
                .flatMap(Optional::stream)
                .filter(engine -> of("engines.csv")
                        .find(List.of("engine"), List.of(engine))
                        .isPresent())
                .findFirst();
    }

    private Optional<String> engineBy(String file, String column, Sheet.Line line) {
        String key = line.cell(column);
        return key.isEmpty()
                ? Optional.empty()
                : of(file).find(List.of(column), List.of(key))
                        .filter(there -> !there.equals(line))
                        .flatMap(this::engineOf);
    }
}
