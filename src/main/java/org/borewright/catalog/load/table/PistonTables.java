package org.borewright.catalog.load.table;

import static org.borewright.catalog.load.sheet.CellTypes.CODE;
import static org.borewright.catalog.load.sheet.CellTypes.FIT;
import static org.borewright.catalog.load.sheet.CellTypes.LENGTH;
import static org.borewright.catalog.load.sheet.CellTypes.NUMBER;
import static org.borewright.catalog.load.sheet.CellTypes.TEXT;
import static org.borewright.catalog.load.sheet.CellTypes.figures;
import static org.borewright.catalog.load.sheet.CellTypes.wholes;
import static org.borewright.catalog.load.sheet.CellTypes.words;
import static org.borewright.catalog.load.sheet.SheetRule.atMost;
import static org.borewright.catalog.load.sheet.SheetRule.gapless;
import static org.borewright.catalog.load.sheet.SheetRule.refers;
import static org.borewright.catalog.load.sheet.SheetRule.together;
import static org.borewright.catalog.load.sheet.SheetRule.unique;

import java.util.function.Function;
import org.borewright.catalog.PistonDesign.Coating;
import org.borewright.catalog.load.sheet.CellType;
import org.borewright.catalog.store.row.GrooveRow;
import org.borewright.catalog.store.row.PistonDesignRow;
import org.borewright.catalog.store.row.PistonRow;
import org.borewright.catalog.store.row.RingRow;
import org.borewright.catalog.store.row.RingSetRow;
import org.borewright.fit.shape.RingFace;
import org.borewright.fit.shape.RingSection;

/** The files that say what pistons and rings are. */
final class PistonTables {

    private static final CellType<String> GROOVE = words(new String[] {"top", "second", "oil"}, Function.identity());
    private static final CellType<String> GRADE = words(new String[] {"A", "B", "C"}, Function.identity());
    private static final CellType<RingSection> SECTION = words(RingSection.values(), RingSection::label);
    private static final CellType<RingFace> FACE = words(RingFace.values(), RingFace::label);

    /** Such as with plain, with chromed and with filed rings: each is tried with every pin, clip and bearing. */
    private static final int MOST_RING_SETS = 3;

    private PistonTables() {}

    static Table<PistonDesignRow> designs() {
        Table<PistonDesignRow> table = Table.of("piston_designs.csv", PistonDesignRow::new)
                .needed("design", CODE, (row, code) -> row.design = code)
                .needed("engine", CODE, (row, code) -> row.engine = code)
                .needed("maker", TEXT, (row, name) -> row.maker = name)
                .needed("expansion_e6_per_K", figures("5", "30"), (row, figure) -> row.expansion = figure)
                .needed("gauge_height_mm", LENGTH, (row, height) -> row.gaugeHeight = height)
                .needed("coating", words(Coating.values(), Coating::label), (row, coating) -> row.coating = coating)
                .needed("clearance_least_mm", LENGTH, (row, least) -> row.clearanceLeast = least)
                .needed("clearance_target_mm", LENGTH, (row, target) -> row.clearanceTarget = target)
                .needed("clearance_greatest_mm", LENGTH, (row, greatest) -> row.clearanceGreatest = greatest)
                .maybe("clearance_wear_mm", LENGTH, (row, wear) -> row.clearanceWear = wear)
                .needed("compression_height_mm", LENGTH, (row, height) -> row.compressionHeight = height)
                .needed("dome_height_mm", LENGTH, (row, height) -> row.domeHeight = height)
                .needed("dome_cm3", figures("-10000", "10000"), (row, volume) -> row.domeVolume = volume)
                .limits("pin_bore", LENGTH, (row, limits) -> row.pinBore = limits)
                .limits("pin_fit", FIT, (row, limits) -> row.pinFit = limits);
        return clips(table).rule(unique("design")).rule(refers("engines.csv", "engine"));
    }

    private static Table<PistonDesignRow> clips(Table<PistonDesignRow> table) {
        return table.column(Column.maybeLimits("clip_span", LENGTH, (row, limits) -> row.clipSpan = limits))
                .column(Column.maybeLimits("clip_groove", LENGTH, (row, limits) -> row.clipGroove = limits))
                .column(Column.maybeLimits("clip_float", LENGTH, (row, limits) -> row.clipFloat = limits))
                .maybe("clip_play_greatest_mm", LENGTH, (row, play) -> row.clipPlayGreatest = play)
                .rule(together(
                        "clip_span_least_mm",
                        "clip_span_greatest_mm",
                        "clip_groove_least_mm",
                        "clip_groove_greatest_mm",
                        "clip_float_least_mm",
                        "clip_float_greatest_mm",
                        "clip_play_greatest_mm"));
    }

    static Table<GrooveRow> grooves() {
        return Table.of("grooves.csv", GrooveRow::new)
                .needed("design", CODE, (row, code) -> row.design = code)
                .needed("order", wholes(1, 10), (row, order) -> row.order = order)
                .needed("groove", GROOVE, (row, groove) -> row.groove = groove)
                .needed("section", SECTION, (row, section) -> row.section = section)
                .limits("width", LENGTH, (row, limits) -> row.width = limits)
                .limits("root", LENGTH, (row, limits) -> row.root = limits)
                .limits("gap", LENGTH, (row, limits) -> row.gap = limits)
                .limits("play", LENGTH, (row, limits) -> row.play = limits)
                .needed("back_least_mm", LENGTH, (row, least) -> row.backLeast = least)
                .rule(refers("piston_designs.csv", "design"))
                .rule(unique("design", "groove"))
                .rule(unique("design", "order"))
                .rule(gapless("order", "design"));
    }

    static Table<PistonRow> pistons() {
        return Table.of("pistons.csv", PistonRow::new)
                .needed("piston", NUMBER, (row, number) -> row.piston = number)
                .needed("design", CODE, (row, code) -> row.design = code)
                .needed("size", TEXT, (row, label) -> row.size = label)
                .needed("hand", EngineTables.HAND, (row, hand) -> row.hand = hand)
                .maybe("grade", GRADE, (row, grade) -> row.grade = grade)
                .limits("diameter", LENGTH, (row, limits) -> row.diameter = limits)
                .column(Column.mass((row, mass) -> row.mass = mass))
                .rule(refers("piston_designs.csv", "design"));
    }

    static Table<RingSetRow> ringSets() {
        return Table.of("ring_sets.csv", RingSetRow::new)
                .needed("ring_set", NUMBER, (row, number) -> row.ringSet = number)
                .needed("design", CODE, (row, code) -> row.design = code)
                .needed("size", TEXT, (row, label) -> row.size = label)
                .needed("nominal_bore_mm", LENGTH, (row, bore) -> row.nominalBore = bore)
                .rule(refers("piston_designs.csv", "design"))
                .rule(atMost(MOST_RING_SETS, "design", "size"));
    }

    static Table<RingRow> rings() {
        return Table.of("rings.csv", RingRow::new)
                .needed("ring_set", NUMBER, (row, number) -> row.ringSet = number)
                .needed("groove", GROOVE, (row, groove) -> row.groove = groove)
                .needed("section", SECTION, (row, section) -> row.section = section)
                .needed("face", FACE, (row, face) -> row.face = face)
                .limits("axial", LENGTH, (row, limits) -> row.axial = limits)
                .limits("wall", LENGTH, (row, limits) -> row.wall = limits)
                .limits("gap", LENGTH, (row, limits) -> row.gap = limits)
                .needed("file_allowance_mm", LENGTH, (row, most) -> row.fileAllowance = most)
                .rule(refers("ring_sets.csv", "ring_set"))
                .rule(unique("ring_set", "groove"));
    }
}
