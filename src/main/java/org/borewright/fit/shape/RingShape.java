package org.borewright.fit.shape;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * One ring.
 *
 * @param groove the groove it is made for: top, second, oil
 * @param section its cross-section
 * @param axialWidth its height
 * @param radialWall its thickness in the radial direction
 * @param gap its closed gap in the gauge
 * @param gaugeBore the diameter of that gauge: the nominal bore of the set (ISO 6621-2)
 * @param fileAllowance how much may be filed off its ends; zero for a ring not made to be filed
 * @param face the running surface
 */
public record RingShape(
        String groove,
        RingSection section,
        Limits axialWidth,
        Limits radialWall,
        Limits gap,
        Length gaugeBore,
        Length fileAllowance,
        RingFace face) {}
