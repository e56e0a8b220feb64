package org.borewright.catalog.load.sheet;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads one file as text (RFC 4180) and sees to it that every line has a cell for every column. */
public final class SheetReader {

    private static final int LARGEST_FILE = 16 << 20;

    private final String file;
    private final List<String> wanted;
    private final Complaints complaints;

    /**
     * A reader of one file.
     *
     * @param file its name
     * @param columns that it must have, and none besides
     * @param complaints where to tell what is bad
     */
    public SheetReader(String file, List<String> columns, Complaints complaints) {
        this.file = file;
        this.wanted = columns;
        this.complaints = complaints;
    }

    /** The file in a folder; one without lines, with a complaint, where it cannot be read. */
    public Sheet read(Path folder) {
        List<CsvRecord> records =
                text(folder.resolve(file)).flatMap(this::records).orElse(List.of());
        if (records.isEmpty()) {
            return Sheet.unreadable(file);
        }
        List<String> columns = records.get(0).getFields();
        checkColumns(columns);
        return new Sheet(
                file,
                columns.containsAll(wanted),
                records.stream().skip(1).map(found -> line(columns, found)).toList());
    }

    private Optional<String> text(Path path) {
        try {
            if (Files.size(path) > LARGEST_FILE) {
                return unreadable("is larger than 16 MB");
            }
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(path));
            String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException notUtf8) {
            return unreadable("is not UTF-8");
        } catch (IOException unreadable) {
            return unreadable(Files.exists(path) ? "cannot be read" : "is missing");
        }
    }

    private Optional<List<CsvRecord>> records(String text) {
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(text)) {
            List<CsvRecord> records = reader.stream().toList();
            return records.isEmpty() ? unreadable("has no line of column names") : Optional.of(records);
        } catch (CsvParseException | IOException broken) {
            return unreadable("is not a CSV file: " + broken.getMessage());
        }
    }

    private <T> Optional<T> unreadable(String reason) {
        complaints.file(file, reason);
        return Optional.empty();
    }

    private void checkColumns(List<String> columns) {
        Set<String> seen = new HashSet<>();
        for (String column : columns) {
            if (!wanted.contains(column)) {
                complaints.column(file, column, "no such column; there are " + String.join(", ", wanted));
            } else if (!seen.add(column)) {
                complaints.column(file, column, "the column stands twice");
            }
        }
        wanted.stream()
                .filter(column -> !columns.contains(column))
                .forEach(column -> complaints.column(file, column, "the column is missing"));
    }

    private Sheet.Line line(List<String> columns, CsvRecord found) {
        int number = Math.toIntExact(found.getStartingLineNumber());
        boolean torn = found.getFieldCount() != columns.size();
        if (torn) {
            complaints.line(
                    file,
                    number,
                    String.join(",", found.getFields()),
                    "has %s cells, the first line names %s columns".formatted(found.getFieldCount(), columns.size()));
        }
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(found.getFieldCount(), columns.size()); i++) {
            cells.put(columns.get(i), found.getField(i));
        }
        return new Sheet.Line(number, torn, cells);
    }
}
