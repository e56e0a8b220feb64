package org.borewright.page.bench.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.borewright.page.Form;

/** Brings what was sent before onto a sheet, whoever sent it. */
public final class FormerSheet {

    private static final String HOLES = "/cylinders/";

    private FormerSheet() {}

    /**
     * The sheet that a form which was sent stands for: the holes in the order of the maker, depths and axes once. Empty where its holes were
     * not all read at the same depths and axes, for then it cannot stand on one sheet.
     */
    public static Optional<Form> of(List<String> cylinders, Form sent) {
        Map<String, String> fields = new LinkedHashMap<>();
        sent.fields()
                .forEach((name, value) ->
                        inOrderOfMaker(cylinders, sent, name).ifPresent(moved -> fields.put(moved, value)));
        Form moved = new Form(fields);
        List<Integer> read = IntStream.range(0, cylinders.size())
                .filter(hole -> moved.fields().containsKey(Sheet.cell(hole, 0, 0)))
                .boxed()
                .toList();
        if (read.isEmpty()) {
            fields.putAll(Sheet.blank(cylinders).fields());
            return Optional.of(new Form(fields));
        }
        int first = read.get(0);
        boolean alike = read.stream()
                .allMatch(hole -> depths(moved, hole).equals(depths(moved, first))
                        && Sheet.axes(moved, hole).equals(Sheet.axes(moved, first)));
        return alike ? Optional.of(onOneSheet(moved, first)) : Optional.empty();
    }

    private static Form onOneSheet(Form form, int first) {
        Map<String, String> fields = new LinkedHashMap<>(form.fields());
        fields.keySet().removeIf(name -> name.contains("/grid/depths/") || name.contains("/grid/axes/"));
        form.fields().forEach((name, value) -> {
            if (name.contains(HOLES + first + "/grid/depths/") || name.contains(HOLES + first + "/grid/axes/")) {
                fields.put(name.replace(HOLES + first + "/", HOLES + "0/"), value);
            }
        });
        return new Form(fields);
    }

    private static List<String> depths(Form form, int hole) {
        return IntStream.iterate(0, row -> form.fields().containsKey(Sheet.depth(hole, row)), row -> row + 1)
                .mapToObj(row -> form.typed(Sheet.depth(hole, row)))
                .toList();
    }

    /** The name of a field where the holes stand in the order of the maker; empty for a hole that the engine does not have. */
    private static Optional<String> inOrderOfMaker(List<String> cylinders, Form sent, String name) {
        int begins = name.indexOf(HOLES);
        if (begins < 0) {
            return Optional.of(name);
        }
        int ends = name.indexOf('/', begins + HOLES.length());
        int hole = cylinders.indexOf(sent.typed(name.substring(begins, ends) + "/cylinder"));
        return hole < 0
                ? Optional.empty()
                : Optional.of(name.substring(0, begins) + HOLES + hole + name.substring(ends));
    }
}
