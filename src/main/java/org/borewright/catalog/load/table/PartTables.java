package org.borewright.catalog.load.table;

import static org.borewright.catalog.load.sheet.CellTypes.CODE;
import static org.borewright.catalog.load.sheet.CellTypes.LENGTH;
import static org.borewright.catalog.load.sheet.CellTypes.NUMBER;
import static org.borewright.catalog.load.sheet.CellTypes.wholes;
import static org.borewright.catalog.load.sheet.CellTypes.words;
import static org.borewright.catalog.load.sheet.SheetRule.atMost;
import static org.borewright.catalog.load.sheet.SheetRule.emptyWhen;
import static org.borewright.catalog.load.sheet.SheetRule.filledWhen;
import static org.borewright.catalog.load.sheet.SheetRule.refers;

import org.borewright.catalog.store.row.BearingRow;
import org.borewright.catalog.store.row.ClipRow;
import org.borewright.catalog.store.row.GasketKitRow;
import org.borewright.catalog.store.row.GasketRow;
import org.borewright.catalog.store.row.PinRow;

/** The files of the parts around the piston. */
final class PartTables {

    /** With so many loose ones of either place, no engine has more than 6 × 5 × 5 sets of gaskets. */
    private static final int MOST_KITS = 6;

    private static final int MOST_LOOSE = 4;

    /** With so many of each, and of ring sets likewise, no pistons of one size can be fitted out in more than 3 × 2 × 2 × 2 ways. */
    private static final int MOST_OF_A_KIND = 2;

    private PartTables() {}

    static Table<PinRow> pins() {
        return Table.of("pins.csv", PinRow::new)
                .needed("pin", NUMBER, (row, number) -> row.pin = number)
                .needed("design", CODE, (row, code) -> row.design = code)
                .limits("outside", LENGTH, (row, limits) -> row.outside = limits)
                .limits("length", LENGTH, (row, limits) -> row.length = limits)
                .rule(refers("piston_designs.csv", "design"))
                .rule(atMost(MOST_OF_A_KIND, "design"));
    }

    static Table<ClipRow> clips() {
        return Table.of("clips.csv", ClipRow::new)
                .needed("clip", NUMBER, (row, number) -> row.clip = number)
                .needed("design", CODE, (row, code) -> row.design = code)
                .limits("wire", LENGTH, (row, limits) -> row.wire = limits)
                .rule(refers("piston_designs.csv", "design"))
                .rule(atMost(MOST_OF_A_KIND, "design"));
    }

    static Table<BearingRow> bearings() {
        return Table.of("bearings.csv", BearingRow::new)
                .needed("bearing", NUMBER, (row, number) -> row.bearing = number)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .rule(refers("engines.csv", "engine"))
                .rule(atMost(MOST_OF_A_KIND, "engine"));
    }

    static Table<GasketKitRow> gasketKits() {
        return Table.of("gasket_kits.csv", GasketKitRow::new)
                .needed("gasket_kit", NUMBER, (row, number) -> row.gasketKit = number)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .needed("serves_cylinders", wholes(1, 100), (row, count) -> row.servesCylinders = count)
                .limits("opening", LENGTH, (row, limits) -> row.opening = limits)
                .limits("head", LENGTH, (row, limits) -> row.head = limits)
                .limits("base", LENGTH, (row, limits) -> row.base = limits)
                .maybe("margin_mm", LENGTH, (row, margin) -> row.margin = margin)
                .rule(refers("engines.csv", "engine"))
                .rule(atMost(MOST_KITS, "engine"));
    }

    static Table<GasketRow> gaskets() {
        return Table.of("gaskets.csv", GasketRow::new)
                .needed("gasket", NUMBER, (row, number) -> row.gasket = number)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .needed(
                        "place",
                        words(GasketRow.Place.values(), GasketRow.Place::label),
                        (row, place) -> row.place = place)
                .needed("serves_cylinders", wholes(1, 100), (row, count) -> row.servesCylinders = count)
                .column(Column.maybeLimits("opening", LENGTH, (row, limits) -> row.opening = limits))
                .limits("thickness", LENGTH, (row, limits) -> row.thickness = limits)
                .maybe("margin_mm", LENGTH, (row, margin) -> row.margin = margin)
                .rule(refers("engines.csv", "engine"))
                .rule(filledWhen("opening_least_mm", "place", "head"))
                .rule(filledWhen("opening_greatest_mm", "place", "head"))
                .rule(emptyWhen("margin_mm", "place", "base"))
                .rule(atMost(MOST_LOOSE, "engine", "place"));
    }
}
