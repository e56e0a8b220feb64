package org.borewright.page.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Problem;
import org.borewright.page.Form;

/**
 * A sheet of readings: the holes side by side, all read at the same depths and along the same axes. Depths and axes stand on it once, in the
 * fields of the first hole, and go into the grid of each hole that was read.
 *
 * @param cylinders names of the holes, as the maker counts
 * @param form that is the sheet
 */
public record Sheet(List<String> cylinders, Form form) {

    /** What a place is sent as that nobody filled in: the API refuses it there, and the refusal is said in words of the sheet. */
    private static final String NOTHING = "nothing";

    private static final Pattern STANDS_ONCE = Pattern.compile("^/cylinders/\\d+/grid/(depths|axes)");
    private static final Pattern OF_A_FINDING =
            Pattern.compile("((?:number:)?/cylinders/([0-9]{1,2})/findings/)([0-9]{1,2})(/.*)?");
    private static final String CANNOT_BE_MEASURED = "–";
    private static final int MOST_DEPTHS = 20;
    private static final int USUAL_DEPTHS = 3;
    private static final int MOST_FINDINGS = 20;
    private static final List<String> CROSS = List.of("thrust", "pin");
    private static final List<String> STAR = List.of("thrust", "pin", "45", "135");

    /** Copies the names. */
    public Sheet {
        cylinders = List.copyOf(cylinders);
    }

    /** A sheet that nobody filled in: three depths, along thrust and pin. */
    public static Form blank(List<String> cylinders) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int hole = 0; hole < cylinders.size(); hole++) {
            fields.put("/cylinders/" + hole + "/cylinder", cylinders.get(hole));
        }
        IntStream.range(0, USUAL_DEPTHS).forEach(row -> fields.put(depth(0, row), ""));
        putAxes(fields, 0, CROSS);
        return new Form(fields);
    }

    private static void putAxes(Map<String, String> fields, int hole, List<String> axes) {
        for (int i = 0; i < axes.size(); i++) {
            fields.put(axis(hole, i, CROSS.contains(axes.get(i))), axes.get(i));
        }
    }

    static String depth(int hole, int row) {
        return "number:" + grid(hole) + "depths/" + row;
    }

    static String cell(int hole, int row, int axis) {
        return "number:" + grid(hole) + "readings/" + row + "/" + axis;
    }

    static String axis(int hole, int axis, boolean named) {
        return (named ? "" : "number:") + grid(hole) + "axes/" + axis;
    }

    private static String grid(int hole) {
        return "/cylinders/" + hole + "/grid/";
    }

    /** The axes, in the words or degrees of the body. */
    public List<String> axes() {
        return axes(form, 0);
    }

    static List<String> axes(Form form, int hole) {
        List<String> axes = new ArrayList<>();
        for (String axis = typedAxis(form, hole, 0); !axis.isBlank(); axis = typedAxis(form, hole, axes.size())) {
            axes.add(axis);
        }
        return axes;
    }

    private static String typedAxis(Form form, int hole, int index) {
        String named = form.typed(axis(hole, index, true));
        return named.isBlank() ? form.typed(axis(hole, index, false)) : named;
    }

    /** The fields of the axes, to be carried on. */
    public Map<String, String> axisFields() {
        Map<String, String> fields = new LinkedHashMap<>();
        putAxes(fields, 0, axes());
        return fields;
    }

    /** The fields of the depths, from the deck down. */
    public List<String> depths() {
        return IntStream.range(0, MOST_DEPTHS)
                .mapToObj(row -> depth(0, row))
                .takeWhile(form.fields()::containsKey)
                .toList();
    }

    /** The holes with their places. */
    public List<HoleOnSheet> holes() {
        return IntStream.range(0, cylinders.size())
                .mapToObj(hole -> new HoleOnSheet(hole, cylinders.get(hole), rows(hole), findings(hole)))
                .toList();
    }

    private List<HoleOnSheet.Seen> findings(int hole) {
        int sent = IntStream.range(0, MOST_FINDINGS)
                .filter(row ->
                        form.fields().containsKey(HoleOnSheet.Seen.in(hole, row).kind()))
                .reduce(0, (above, below) -> below);
        int noted = noted(hole).stream().reduce(-1, (above, below) -> below);
        return IntStream.range(0, Math.min(Math.max(sent, noted + 1) + 1, MOST_FINDINGS))
                .mapToObj(row -> HoleOnSheet.Seen.in(hole, row))
                .toList();
    }

    /** The rows of findings of a hole in which something is typed. */
    private List<Integer> noted(int hole) {
        return IntStream.range(0, MOST_FINDINGS)
                .filter(row -> HoleOnSheet.Seen.in(hole, row).names().stream().anyMatch(this::isTyped))
                .boxed()
                .toList();
    }

    /** The name of a field of the body, in which no row of findings left empty lies before another; empty for a field of such a row. */
    private Optional<String> closedUp(String name) {
        Matcher finding = OF_A_FINDING.matcher(name);
        if (!finding.matches()) {
            return Optional.of(name);
        }
        int row = noted(Integer.parseInt(finding.group(2))).indexOf(Integer.parseInt(finding.group(3)));
        return row < 0 ? Optional.empty() : Optional.of(finding.group(1) + row + finding.group(4));
    }

    /** Where a place of the body stands on the sheet. */
    private String onTheSheet(String pointer) {
        Matcher finding = OF_A_FINDING.matcher(pointer);
        if (!finding.matches()) {
            return STANDS_ONCE.matcher(pointer).replaceFirst(grid(0) + "$1");
        }
        List<Integer> noted = noted(Integer.parseInt(finding.group(2)));
        int row = Integer.parseInt(finding.group(3));
        return row < noted.size()
                ? finding.group(1) + noted.get(row) + Objects.requireNonNullElse(finding.group(4), "")
                : pointer;
    }

    private List<HoleOnSheet.Row> rows(int hole) {
        List<String> axes = axes();
        List<String> depths = depths();
        return IntStream.range(0, depths.size())
                .mapToObj(row -> new HoleOnSheet.Row(
                        form.typed(depths.get(row)),
                        row + 1,
                        IntStream.range(0, axes.size())
                                .mapToObj(axis -> new HoleOnSheet.Cell(cell(hole, row, axis), axes.get(axis)))
                                .toList()))
                .toList();
    }

    /** The form that is sent: each hole that was read with its whole grid, the others without one. Rows that nobody began are left out. */
    public Form asked() {
        Map<String, String> fields = new LinkedHashMap<>();
        form.fields().forEach((name, value) -> closedUp(name).ifPresent(moved -> fields.put(moved, value)));
        fields.keySet().removeIf(name -> name.contains("/grid/"));
        int begun = begun();
        for (HoleOnSheet hole : holes()) {
            List<HoleOnSheet.Row> rows = hole.rows().subList(0, begun);
            if (rows.stream().flatMap(row -> row.cells().stream()).anyMatch(cell -> isTyped(cell.name()))) {
                putAxes(fields, hole.index(), axes());
                for (int row = 0; row < rows.size(); row++) {
                    String depth = rows.get(row).depth();
                    fields.put(depth(hole.index(), row), depth.isBlank() ? CANNOT_BE_MEASURED : depth);
                    rows.get(row)
                            .cells()
                            .forEach(cell ->
                                    fields.put(cell.name(), isTyped(cell.name()) ? form.typed(cell.name()) : NOTHING));
                }
            }
        }
        return new Form(fields);
    }

    /** How many rows there are down to the last in which something was typed. */
    private int begun() {
        List<String> depths = depths();
        return IntStream.range(0, depths.size())
                        .filter(row -> isTyped(depths.get(row))
                                || holes().stream()
                                        .flatMap(hole -> hole.rows().get(row).cells().stream())
                                        .anyMatch(cell -> isTyped(cell.name())))
                        .reduce((above, below) -> below)
                        .orElse(-1)
                + 1;
    }

    private boolean isTyped(String name) {
        return !form.typed(name).isBlank();
    }

    /** A refusal in words of the sheet: a place left empty is told as such, and a depth or an axis once, for it stands on the sheet once. */
    public Problem inWords(Problem problem) {
        Map<String, Fault> faults = new LinkedHashMap<>();
        problem.faults().stream()
                .map(this::inWords)
                .forEach(fault -> faults.putIfAbsent(fault.pointer() + " " + fault.part(), fault));
        return new Problem(
                problem.type(), problem.status(), problem.detail(), List.copyOf(faults.values()), problem.thisTime());
    }

    private Fault inWords(Fault fault) {
        String pointer = fault.pointer();
        if (pointer == null) {
            return fault;
        }
        return ("\"" + NOTHING + "\" is not a number.").equals(fault.reason())
                ? Fault.of(fault.type(), pointer, "Nothing is entered here.")
                        .wayOut("Enter the reading, or a dash where it cannot be measured.")
                : new Fault(
                        fault.type(),
                        onTheSheet(pointer),
                        fault.part(),
                        fault.value(),
                        fault.limit(),
                        fault.reason(),
                        fault.wayOut(),
                        fault.suggestion());
    }

    /** The same sheet in another shape, where that is asked for: {@code deeper}, {@code star}, {@code cross} or {@code finding}. */
    public Optional<Sheet> reshaped(String shape) {
        Map<String, String> fields = new LinkedHashMap<>(form.fields());
        switch (shape) {
            case "deeper" -> fields.putIfAbsent(depth(0, Math.min(depths().size(), MOST_DEPTHS - 1)), "");
            case "finding" ->
                holes().forEach(hole -> fields.putIfAbsent(
                        HoleOnSheet.Seen.in(
                                        hole.index(), Math.min(hole.findings().size(), MOST_FINDINGS - 1))
                                .kind(),
                        ""));
            case "star" -> putAxes(fields, 0, STAR);
            case "cross" ->
                IntStream.range(CROSS.size(), axes().size()).forEach(axis -> {
                    fields.remove(axis(0, axis, true));
                    fields.remove(axis(0, axis, false));
                });
            default -> {
                return Optional.empty();
            }
        }
        return Optional.of(new Sheet(cylinders, new Form(fields)));
    }
}
