package org.borewright.catalog.load.sense;

import static java.util.Map.entry;
import static java.util.Objects.requireNonNull;

import java.util.Map;
import org.borewright.fit.Rule;

/** The rules of fit that are asked when a catalogue is loaded, each with the cell to look at first when it refuses a part. */
final class Blame {

    /** Every rule that is asked. */
    static final Map<Rule, String> COLUMNS = Map.ofEntries(
            entry(Rule.PISTON_SIZE, "diameter_least_mm"),
            entry(Rule.MASS_SPREAD, "mass_greatest_g"),
            entry(Rule.RING_BORE, "nominal_bore_mm"),
            entry(Rule.RING_SECTION, "section"),
            entry(Rule.RING_PLAY_LEAST, "axial_greatest_mm"),
            entry(Rule.RING_PLAY_GREATEST, "axial_least_mm"),
            entry(Rule.RING_BACK, "wall_greatest_mm"),
            entry(Rule.RING_GAP_LEAST, "gap_least_mm"),
            entry(Rule.RING_GAP_TO_FILE, "file_allowance_mm"),
            entry(Rule.RING_GAP_GREATEST, "gap_greatest_mm"),
            entry(Rule.PIN_IN_PISTON_LEAST, "outside_greatest_mm"),
            entry(Rule.PIN_IN_ROD_LEAST, "outside_greatest_mm"),
            entry(Rule.PIN_IN_PISTON_GREATEST, "outside_least_mm"),
            entry(Rule.PIN_IN_ROD_GREATEST, "outside_least_mm"),
            entry(Rule.CLIP_FLOAT_LEAST, "length_greatest_mm"),
            entry(Rule.CLIP_FLOAT_GREATEST, "length_least_mm"),
            entry(Rule.CLIP_PLAY_LEAST, "wire_greatest_mm"),
            entry(Rule.CLIP_PLAY_GREATEST, "wire_least_mm"),
            entry(Rule.GASKET_OPENING, "opening_least_mm"),
            entry(Rule.GASKET_LAND, "opening_greatest_mm"),
            entry(Rule.PISTON_TO_HEAD_LEAST, "compression_height_mm"),
            entry(Rule.PISTON_TO_HEAD_GREATEST, "compression_height_mm"),
            entry(Rule.BRIDGE, "pitch_to_next_mm"),
            entry(Rule.PRELOAD, "torque_Nm"));

    private Blame() {}

    static String column(Rule rule) {
        return requireNonNull(COLUMNS.get(rule), () -> rule + " is not asked when a catalogue is loaded");
    }
}
