package org.borewright.fit;

import org.borewright.measure.Length;

/** Volumes of a cylinder in cm³: π/4·B²·h. Source: geometry. */
public final class Displacement {

    private Displacement() {}

    /** The volume of one cylinder of a bore and a height, in cm³. */
    public static double ofOne(Length bore, Length height) {
        double diameter = bore.toMillimetres();
        return Math.PI / 4 * diameter * diameter * height.toMillimetres() / 1000;
    }
}
