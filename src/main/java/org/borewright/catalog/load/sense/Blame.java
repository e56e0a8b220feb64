package org.borewright.catalog.load.sense;

import java.util.List;
import org.borewright.fit.Rule;

/**
 * A rule of fit that is asked when a catalogue is loaded, and the cell to look at first when it refuses a line.
 *
 * @param rule the rule
 * @param file of the line it refuses
 * @param column of the cell
 */
record Blame(Rule rule, String file, String column) {

    private static final String ENGINES = "engines.csv";
    private static final String DESIGNS = "piston_designs.csv";
    private static final String PISTONS = "pistons.csv";
    private static final String RINGS = "rings.csv";
    private static final String PINS = "pins.csv";
    private static final String CLIPS = "clips.csv";
    private static final String KITS = "gasket_kits.csv";
    private static final String LOOSE = "gaskets.csv";

    /** Every rule that is asked, in its order; more than once where either of several files may be at fault. */
    static final List<Blame> CELLS = List.of(
            new Blame(Rule.WALL_LEFT, ENGINES, "sleeve_outside_mm"),
            new Blame(Rule.SPIGOT_WALL, ENGINES, "spigot_outside_mm"),
            new Blame(Rule.BRIDGE, "cylinders.csv", "pitch_to_next_mm"),
            new Blame(Rule.RING_BORE, "ring_sets.csv", "nominal_bore_mm"),
            new Blame(Rule.RING_SECTION, RINGS, "section"),
            new Blame(Rule.RING_FACE, RINGS, "face"),
            new Blame(Rule.RING_GAP_LEAST, RINGS, "gap_least_mm"),
            new Blame(Rule.RING_GAP_TO_FILE, RINGS, "file_allowance_mm"),
            new Blame(Rule.RING_GAP_GREATEST, RINGS, "gap_greatest_mm"),
            new Blame(Rule.RING_PLAY_LEAST, RINGS, "axial_greatest_mm"),
            new Blame(Rule.RING_PLAY_GREATEST, RINGS, "axial_least_mm"),
            new Blame(Rule.RING_BACK, RINGS, "wall_greatest_mm"),
            new Blame(Rule.PIN_IN_PISTON_LEAST, PINS, "outside_greatest_mm"),
            new Blame(Rule.PIN_IN_PISTON_GREATEST, PINS, "outside_least_mm"),
            new Blame(Rule.PIN_IN_ROD_LEAST, PINS, "outside_greatest_mm"),
            new Blame(Rule.PIN_IN_ROD_GREATEST, PINS, "outside_least_mm"),
            new Blame(Rule.CLIP_FLOAT_LEAST, PINS, "length_greatest_mm"),
            new Blame(Rule.CLIP_FLOAT_LEAST, CLIPS, "wire_greatest_mm"),
            new Blame(Rule.CLIP_FLOAT_GREATEST, PINS, "length_least_mm"),
            new Blame(Rule.CLIP_FLOAT_GREATEST, CLIPS, "wire_least_mm"),
            new Blame(Rule.CLIP_PLAY_LEAST, CLIPS, "wire_greatest_mm"),
            new Blame(Rule.CLIP_PLAY_GREATEST, CLIPS, "wire_least_mm"),
            new Blame(Rule.GASKET_OPENING, KITS, "opening_least_mm"),
            new Blame(Rule.GASKET_OPENING, LOOSE, "opening_least_mm"),
            new Blame(Rule.GASKET_LAND, KITS, "opening_greatest_mm"),
            new Blame(Rule.GASKET_LAND, LOOSE, "opening_greatest_mm"),
            new Blame(Rule.CROWN_IN_MOUTH, ENGINES, "head_mouth_mm"),
            new Blame(Rule.PISTON_TO_HEAD_LEAST, DESIGNS, "compression_height_mm"),
            new Blame(Rule.PISTON_TO_HEAD_LEAST, KITS, "head_least_mm"),
            new Blame(Rule.PISTON_TO_HEAD_LEAST, LOOSE, "thickness_least_mm"),
            new Blame(Rule.PISTON_TO_HEAD_GREATEST, DESIGNS, "compression_height_mm"),
            new Blame(Rule.PISTON_TO_HEAD_GREATEST, KITS, "head_greatest_mm"),
            new Blame(Rule.PISTON_TO_HEAD_GREATEST, LOOSE, "thickness_greatest_mm"),
            new Blame(Rule.COMPRESSION_RATIO, DESIGNS, "dome_cm3"),
            new Blame(Rule.COMPRESSION_RATIO, KITS, "head_least_mm"),
            new Blame(Rule.COMPRESSION_RATIO, LOOSE, "thickness_least_mm"),
            new Blame(Rule.MASS_SPREAD, PISTONS, "mass_greatest_g"),
            new Blame(Rule.PRELOAD, "torque_stages.csv", "torque_Nm"),
            new Blame(Rule.PISTON_SIZE, PISTONS, "diameter_least_mm"));

    /** The cell to look at first when a rule refuses a line of a file. */
    static String column(Rule rule, String file) {
        return CELLS.stream()
                .filter(cell -> cell.rule == rule && cell.file.equals(file))
                .map(Blame::column)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("%s is not asked of %s".formatted(rule, file)));
    }
}
