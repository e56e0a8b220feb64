package org.borewright.catalog.load.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.borewright.catalog.load.sheet.Complaints;
import org.borewright.catalog.load.sheet.Sheet;
import org.borewright.catalog.load.sheet.Sheets;

/** Each number names one thing in the whole catalogue, and whatever refers to a number finds it. */
public final class NumberRules {

    private static final String BOXES = "boxes.csv";

    /** The files that give a number to a thing, with the column that does so. */
    private static final List<Naming> NAMINGS = List.of(
            new Naming("pistons.csv", "piston", false),
            new Naming("ring_sets.csv", "ring_set", false),
            new Naming("pins.csv", "pin", false),
            new Naming("clips.csv", "clip", false),
            new Naming("bearings.csv", "bearing", false),
            new Naming("gasket_kits.csv", "gasket_kit", false),
            new Naming("gaskets.csv", "gasket", false),
            new Naming("fasteners.csv", "single_use_bolt", true),
            new Naming(BOXES, "box", true));

    private final Sheets sheets;
    private final Complaints complaints;
    private final Map<String, Origin> origins = new HashMap<>();

    /** Which column names things; {@code again}: several lines may be about one thing. */
    private record Naming(String file, String column, boolean again) {}

    private record Origin(String file, int line) {}

    private NumberRules(Sheets sheets, Complaints complaints) {
        this.sheets = sheets;
        this.complaints = complaints;
    }

    /** Complains of a number that names two things, or that is referred to and names none. */
    public static void check(Sheets sheets, Complaints complaints) {
        NumberRules rules = new NumberRules(sheets, complaints);
        NAMINGS.forEach(rules::oneThingEach);
        if (NAMINGS.stream().allMatch(naming -> sheets.of(naming.file()).isWhole())) {
            rules.references();
        }
    }

    private void oneThingEach(Naming naming) {
        Sheet sheet = sheets.of(naming.file());
        for (Sheet.Line line : sheet.all()) {
            String number = line.cell(naming.column());
            Origin before =
                    number.isEmpty() ? null : origins.putIfAbsent(number, new Origin(naming.file(), line.number()));
            if (before != null
                    && !line.torn()
                    && !(naming.again() && before.file().equals(naming.file()))) {
                complaints.cell(sheet, line, naming.column(), Duty.ONE_THING.reason(before.file(), before.line()));
            }
        }
    }

    private void references() {
        Predicate<String> box = number -> BOXES.equals(fileOf(number));
        known(BOXES, "part", box.negate().and(origins::containsKey), Duty.PART_OF_A_BOX);
        known("prices.csv", "number", origins::containsKey, Duty.PRICED_THING);
        Predicate<String> withdrawn = number -> sheets.of("withdrawn.csv")
                .find(List.of("number"), List.of(number))
                .isPresent();
        known("withdrawn.csv", "replaced_by", withdrawn.or(origins::containsKey), Duty.REPLACEMENT);
    }

    private String fileOf(String number) {
        Origin origin = origins.get(number);
        return origin == null ? "" : origin.file();
    }

    private void known(String file, String column, Predicate<String> isKnown, Duty duty) {
        Sheet sheet = sheets.of(file);
        sheet.lines().stream()
                .filter(line -> !line.cell(column).isEmpty() && !isKnown.test(line.cell(column)))
                .forEach(line -> complaints.cell(sheet, line, column, duty.reason()));
    }
}
