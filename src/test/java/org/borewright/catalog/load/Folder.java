package org.borewright.catalog.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A copy of the small catalogue, two engines without a fault, to spoil. */
public record Folder(Path path) {

    private static final Path SMALL = Path.of("src/test/resources/catalog-small");

    public static Folder in(Path path) {
        try (Stream<Path> files = Files.list(SMALL)) {
            for (Path file : files.toList()) {
                Files.copy(file, path.resolve(file.getFileName().toString()));
            }
            return new Folder(path);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Writes a value into a cell. */
    public Folder cell(String file, int line, String column, String value) {
        return lines(file, lines -> {
            List<String> cells =
                    new ArrayList<>(Arrays.asList(lines.get(line - 1).split(",", -1)));
            cells.set(List.of(lines.get(0).split(",")).indexOf(column), value);
            lines.set(line - 1, String.join(",", cells));
            return lines;
        });
    }

    /**
     * Spoils a line as a table of cases says it.
     *
     * @param line its number, or {@code new} to add some
     * @param columns separated by semicolons; empty for new lines
     * @param values for them, separated by semicolons; new lines are given whole
     */
    public Folder spoilt(String file, String line, String columns, String values) {
        if ("new".equals(line)) {
            return lines(file, lines -> {
                lines.addAll(List.of(values.split(";", -1)));
                return lines;
            });
        }
        String[] names = columns.split(";", -1);
        String[] cells = values.split(";", -1);
        for (int i = 0; i < names.length; i++) {
            cell(file, Integer.parseInt(line), names[i], cells[i]);
        }
        return this;
    }

    /** Writes a whole line. */
    public Folder line(String file, int line, String text) {
        return lines(file, lines -> {
            lines.set(line - 1, text);
            return lines;
        });
    }

    public Folder without(String file, int line) {
        return lines(file, lines -> {
            lines.remove(line - 1);
            return lines;
        });
    }

    public Folder with(String file, String line) {
        return lines(file, lines -> {
            lines.add(line);
            return lines;
        });
    }

    public Folder text(String file, UnaryOperator<String> change) {
        try {
            Files.writeString(path.resolve(file), change.apply(Files.readString(path.resolve(file))));
            return this;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    public Folder bytes(String file, byte[] bytes) {
        try {
            Files.write(path.resolve(file), bytes);
            return this;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    public Folder remove(String file) {
        try {
            Files.delete(path.resolve(file));
            return this;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    public Delivery delivery() {
        return Delivery.from(path);
    }

    private Folder lines(String file, UnaryOperator<List<String>> change) {
        return text(
                file,
                text -> String.join(
                                "\n", change.apply(new ArrayList<>(text.lines().toList()))) + "\n");
    }
}
