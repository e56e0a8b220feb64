package org.borewright.catalog.load;

import org.borewright.fit.Rule;

/** Which cell to look at first when a rule of fit holds something against a line. */
final class Blame {

    private Blame() {}

    static String column(Rule rule) {
        return switch (rule) {
            case PISTON_SIZE -> "diameter_least_mm";
            case MASS_SPREAD -> "mass_greatest_g";
            case RING_BORE -> "nominal_bore_mm";
            case RING_SECTION -> "section";
            case RING_PLAY_LEAST -> "axial_greatest_mm";
            case RING_PLAY_GREATEST -> "axial_least_mm";
            case RING_BACK -> "wall_greatest_mm";
            case RING_GAP_LEAST -> "gap_least_mm";
            case RING_GAP_TO_FILE -> "file_allowance_mm";
            case RING_GAP_GREATEST -> "gap_greatest_mm";
            case PIN_IN_PISTON_LEAST, PIN_IN_ROD_LEAST -> "outside_greatest_mm";
            case PIN_IN_PISTON_GREATEST, PIN_IN_ROD_GREATEST -> "outside_least_mm";
            case CLIP_FLOAT_LEAST, CLIP_PLAY_LEAST -> "wire_greatest_mm";
            case CLIP_FLOAT_GREATEST, CLIP_PLAY_GREATEST -> "wire_least_mm";
            case GASKET_OPENING -> "opening_least_mm";
            case GASKET_LAND -> "opening_greatest_mm";
            case PISTON_TO_HEAD_LEAST, PISTON_TO_HEAD_GREATEST -> "compression_height_mm";
            case BRIDGE -> "pitch_to_next_mm";
            case PRELOAD -> "torque_Nm";
            default -> throw new IllegalArgumentException(rule + " is not asked when a catalogue is loaded");
        };
    }
}
