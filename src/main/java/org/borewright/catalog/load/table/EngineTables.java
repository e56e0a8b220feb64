package org.borewright.catalog.load.table;

import static org.borewright.catalog.load.sheet.CellTypes.CODE;
import static org.borewright.catalog.load.sheet.CellTypes.FIT;
import static org.borewright.catalog.load.sheet.CellTypes.LENGTH;
import static org.borewright.catalog.load.sheet.CellTypes.TEXT;
import static org.borewright.catalog.load.sheet.CellTypes.YES_NO;
import static org.borewright.catalog.load.sheet.CellTypes.counts;
import static org.borewright.catalog.load.sheet.CellTypes.figures;
import static org.borewright.catalog.load.sheet.CellTypes.lengths;
import static org.borewright.catalog.load.sheet.CellTypes.wholes;
import static org.borewright.catalog.load.sheet.CellTypes.words;
import static org.borewright.catalog.load.sheet.SheetRule.gapless;
import static org.borewright.catalog.load.sheet.SheetRule.refers;
import static org.borewright.catalog.load.sheet.SheetRule.together;
import static org.borewright.catalog.load.sheet.SheetRule.unique;

import org.borewright.catalog.BoreSpec.LabelNames;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Hand;
import org.borewright.catalog.Layout;
import org.borewright.catalog.Strokes;
import org.borewright.catalog.load.sheet.CellType;
import org.borewright.catalog.store.row.CylinderRow;
import org.borewright.catalog.store.row.EngineRow;
import org.borewright.catalog.store.row.SizeRow;
import org.borewright.fit.shape.BoreSurface;
import org.borewright.measure.LengthUnit;

/** The files that say what an engine is. */
final class EngineTables {

    static final CellType<Hand> HAND = words(Hand.values(), Hand::label);

    private EngineTables() {}

    static Table<EngineRow> engines() {
        Table<EngineRow> table = Table.of("engines.csv", EngineRow::new);
        build(table);
        hole(table);
        metal(table);
        deck(table);
        return rodAndLimits(table)
                .rule(unique("engine"))
                .rule(together("spigot_outside_mm", "spigot_wall_least_mm"))
                .rule(together("choke_least_mm", "choke_greatest_mm"));
    }

    private static Table<EngineRow> build(Table<EngineRow> table) {
        return table.needed("engine", CODE, (row, code) -> row.engine = code)
                .needed("maker", TEXT, (row, name) -> row.maker = name)
                .needed("model", TEXT, (row, name) -> row.model = name)
                .needed(
                        "strokes",
                        words(Strokes.values(), strokes -> Integer.toString(strokes.count())),
                        (row, strokes) -> row.strokes = strokes)
                .needed("layout", words(Layout.values(), Layout::label), (row, layout) -> row.layout = layout)
                .needed(
                        "construction",
                        words(Construction.values(), Construction::label),
                        (row, construction) -> row.construction = construction)
                .needed(
                        "surface",
                        words(BoreSurface.values(), BoreSurface::label),
                        (row, surface) -> row.surface = surface)
                .needed("torque_plate", YES_NO, (row, plate) -> row.torquePlate = plate)
                .needed("steps", words(LengthUnit.values(), LengthUnit::symbol), (row, unit) -> row.steps = unit);
    }

    private static Table<EngineRow> hole(Table<EngineRow> table) {
        return table.needed("bore_mm", lengths("10", "300"), (row, bore) -> row.bore = bore)
                .limits("new_bore", lengths("10", "300"), (row, limits) -> row.newBore = limits)
                .needed("stroke_mm", lengths("10", "400"), (row, stroke) -> row.stroke = stroke)
                .needed(
                        "label_names",
                        words(LabelNames.values(), LabelNames::label),
                        (row, named) -> row.labelNames = named)
                .needed("expansion_e6_per_K", figures("5", "30"), (row, figure) -> row.expansion = figure)
                .maybe(
                        "expansion_uncertainty_e6_per_K",
                        figures("0", "10"),
                        (row, figure) -> row.expansionUncertainty = figure)
                .maybe("hone_stock_mm", lengths("0", "0.5"), (row, stock) -> row.honeStock = stock)
                .maybe("hone_clean_up_mm", lengths("0", "0.1"), (row, beyond) -> row.honeCleanUp = beyond)
                .maybe("centring_mm", lengths("0", "0.5"), (row, error) -> row.centring = error)
                .maybe("largest_oversize_mm", lengths("0", "5"), (row, most) -> row.largestOversize = most);
    }

    private static Table<EngineRow> metal(Table<EngineRow> table) {
        return table.maybe("sleeve_outside_mm", LENGTH, (row, diameter) -> row.sleeveOutside = diameter)
                .maybe("wall_least_mm", LENGTH, (row, wall) -> row.wallLeast = wall)
                .maybe("spigot_outside_mm", LENGTH, (row, diameter) -> row.spigotOutside = diameter)
                .maybe("spigot_wall_least_mm", LENGTH, (row, wall) -> row.spigotWallLeast = wall)
                .maybe("bridge_least_mm", LENGTH, (row, bridge) -> row.bridgeLeast = bridge);
    }

    private static Table<EngineRow> deck(Table<EngineRow> table) {
        return table.limits("barrel_height", LENGTH, (row, limits) -> row.barrelHeight = limits)
                .needed("rod_mm", LENGTH, (row, rod) -> row.rod = rod)
                .limits("piston_to_head", LENGTH, (row, limits) -> row.pistonToHead = limits)
                .needed("chamber_cm3", figures("0.1", "10000"), (row, volume) -> row.chamber = volume)
                .needed("head_flat", YES_NO, (row, flat) -> row.headFlat = flat)
                .maybe("head_mouth_mm", LENGTH, (row, mouth) -> row.headMouth = mouth)
                .needed("gasket_land_mm", LENGTH, (row, land) -> row.gasketLand = land)
                .needed("ratio_greatest", counts(6, "4", "20"), (row, ratio) -> row.ratioGreatest = ratio);
    }

    private static Table<EngineRow> rodAndLimits(Table<EngineRow> table) {
        return table.limits("rod_bore", LENGTH, (row, limits) -> row.rodBore = limits)
                .limits("rod_fit", FIT, (row, limits) -> row.rodFit = limits)
                .needed("pin_pressed", YES_NO, (row, pressed) -> row.pinPressed = pressed)
                .needed("small_end_bearing", YES_NO, (row, bearing) -> row.smallEndBearing = bearing)
                .needed("wear_allowance_mm", LENGTH, (row, most) -> row.wearAllowance = most)
                .needed("taper_allowance_mm", LENGTH, (row, most) -> row.taperAllowance = most)
                .needed("out_of_round_allowance_mm", LENGTH, (row, most) -> row.outOfRoundAllowance = most)
                .column(Column.maybeLimits("choke", lengths("-1", "1"), (row, limits) -> row.choke = limits))
                .needed("deck_flatness_mm", LENGTH, (row, most) -> row.deckFlatness = most)
                .needed("skim_greatest_mm", LENGTH, (row, most) -> row.skimGreatest = most)
                .needed("mass_spread_g", counts(3, "0", "10000"), (row, most) -> row.massSpread = most)
                .maybe("finished_shape_mm", lengths("0.001", "0.1"), (row, most) -> row.finishedShape = most);
    }

    static Table<CylinderRow> cylinders() {
        return Table.of("cylinders.csv", CylinderRow::new)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .needed("order", wholes(1, 100), (row, order) -> row.order = order)
                .needed("cylinder", TEXT, (row, name) -> row.cylinder = name)
                .needed("hand", HAND, (row, hand) -> row.hand = hand)
                .maybe("pitch_to_next_mm", LENGTH, (row, pitch) -> row.pitchToNext = pitch)
                .rule(refers("engines.csv", "engine"))
                .rule(unique("engine", "cylinder"))
                .rule(unique("engine", "order"))
                .rule(gapless("order", "engine"));
    }

    static Table<SizeRow> sizes() {
        return Table.of("sizes.csv", SizeRow::new)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .needed("size", TEXT, (row, label) -> row.size = label)
                .needed("oversize_mm", lengths("0", "5"), (row, oversize) -> row.oversize = oversize)
                .needed("further_work", YES_NO, (row, further) -> row.furtherWork = further)
                .rule(refers("engines.csv", "engine"))
                .rule(unique("engine", "size"));
    }
}
