package org.borewright.catalog.load.sheet;

import static java.util.stream.Collectors.groupingBy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What lines of files owe each other, seen in their text alone.
 *
 * @param words as listed in the README of the catalogue
 * @param test of a sheet
 */
public record SheetRule(String words, Test test) {

    /** How a sheet is tested. */
    @FunctionalInterface
    interface Test {

        void ask(Sheet sheet, Sheets all, Complaints complaints);
    }

    /** Complains of the lines of a sheet that owe something to each other or to another sheet. */
    public void check(Sheet sheet, Sheets all, Complaints complaints) {
        test.ask(sheet, all, complaints);
    }

    /** No two lines have the same in these columns. */
    public static SheetRule unique(String... columns) {
        List<String> key = List.of(columns);
        String last = columns[columns.length - 1];
        return new SheetRule("one line for each " + String.join(", ", columns), (sheet, all, complaints) -> {
            Map<List<String>, Sheet.Line> first = new HashMap<>();
            for (Sheet.Line line : sheet.lines()) {
                Sheet.Line before = first.putIfAbsent(line.cells(key), line);
                if (before != null && !line.cell(last).isEmpty()) {
                    complaints.cell(sheet, line, last, "stands already on line %s".formatted(before.number()));
                }
            }
        });
    }

    /** What stands in these columns stands in the same columns of another file; an empty last cell refers to nothing. */
    public static SheetRule refers(String file, String... columns) {
        List<String> key = List.of(columns);
        String last = columns[columns.length - 1];
        return new SheetRule("%s in %s".formatted(String.join(", ", columns), file), (sheet, all, complaints) -> {
            Sheet other = all.of(file);
            sheet.lines().stream()
                    .filter(line -> other.isWhole() && !line.cell(last).isEmpty())
                    .filter(line -> other.find(key, line.cells(key)).isEmpty())
                    .forEach(line -> complaints.cell(sheet, line, last, notIn(file, line, key)));
        });
    }

    private static String notIn(String file, Sheet.Line line, List<String> columns) {
        List<String> before = line.cells(columns.subList(0, columns.size() - 1));
        return "is not in " + file + (before.isEmpty() ? "" : " for " + String.join(", ", before));
    }

    /** Within lines that have the same in the other columns, the numbers of the first count from 1 without a gap. */
    public static SheetRule gapless(String order, String... within) {
        return new SheetRule(
                within.length == 0
                        ? order + " counts from 1"
                        : "%s counts from 1 for each %s".formatted(order, String.join(", ", within)),
                (sheet, all, complaints) -> sheet.lines().stream()
                        .collect(groupingBy(line -> line.cells(List.of(within))))
                        .values()
                        .forEach(group -> gapless(order, sheet, group, complaints)));
    }

    private static void gapless(String order, Sheet sheet, List<Sheet.Line> group, Complaints complaints) {
        Set<String> numbers = new HashSet<>();
        group.forEach(line -> numbers.add(line.cell(order)));
        for (Sheet.Line line : group) {
            String number = line.cell(order);
            if (number.matches("[1-9]\\d{0,8}") && !number.equals("1")) {
                String before = Integer.toString(Integer.parseInt(number) - 1);
                if (!numbers.contains(before)) {
                    complaints.cell(sheet, line, order, "there is no %s before it".formatted(before));
                }
            }
        }
    }

    /** All of these columns are filled, or none. */
    public static SheetRule together(String... columns) {
        return new SheetRule("all or none of " + String.join(", ", columns), (sheet, all, complaints) -> {
            for (Sheet.Line line : sheet.lines()) {
                List<String> empty = Stream.of(columns)
                        .filter(column -> line.cell(column).isEmpty())
                        .toList();
                if (empty.size() < columns.length) {
                    empty.forEach(column -> complaints.cell(
                            sheet, line, column, "is empty; fill all or none of " + String.join(", ", columns)));
                }
            }
        });
    }

    /** A column is empty where another holds a word. */
    public static SheetRule emptyWhen(String column, String other, String word) {
        return new SheetRule(
                "%s empty where %s is %s".formatted(column, other, word),
                (sheet, all, complaints) -> sheet.lines().stream()
                        .filter(line ->
                                !line.cell(column).isEmpty() && line.cell(other).equals(word))
                        .forEach(line -> complaints.cell(
                                sheet, line, column, "is empty where %s is %s".formatted(other, word))));
    }

    /** Not more lines than so many have the same in these columns: what is made of them stays small enough to be looked through. */
    public static SheetRule atMost(int most, String... columns) {
        List<String> key = List.of(columns);
        String last = columns[columns.length - 1];
        String words = "at most %s lines for each %s".formatted(most, String.join(", ", columns));
        return new SheetRule(
                words,
                (sheet, all, complaints) -> sheet.lines().stream()
                        .collect(groupingBy(line -> line.cells(key)))
                        .values()
                        .forEach(group -> group.stream()
                                .skip(most)
                                .forEach(line -> complaints.cell(sheet, line, last, "is one too many; " + words))));
    }

    /** Exactly one of two columns is filled. */
    public static SheetRule eitherOr(String one, String other) {
        return new SheetRule(
                "one of %s and %s".formatted(one, other),
                (sheet, all, complaints) -> sheet.lines().stream()
                        .filter(line ->
                                line.cell(one).isEmpty() == line.cell(other).isEmpty())
                        .forEach(line -> complaints.cell(
                                sheet, line, one, "fill one of %s and %s, not both or neither".formatted(one, other))));
    }

    /** A column is filled exactly where another holds a word. */
    public static SheetRule filledWhen(String column, String other, String word) {
        return new SheetRule(
                "%s exactly where %s is %s".formatted(column, other, word),
                (sheet, all, complaints) -> sheet.lines().stream()
                        .filter(line ->
                                line.cell(column).isEmpty() == line.cell(other).equals(word))
                        .forEach(line -> complaints.cell(
                                sheet, line, column, "is filled exactly where %s is %s".formatted(other, word))));
    }
}
