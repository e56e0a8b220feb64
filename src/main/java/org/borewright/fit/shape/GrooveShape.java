package org.borewright.fit.shape;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * One ring groove.
 *
 * @param name its place: top, second, oil
 * @param section the cross-section it is cut for
 * @param width its axial width
 * @param root the diameter of its bottom
 * @param gap the ring gap allowed in the hole
 * @param axialPlay the play allowed between ring and groove
 * @param backClearanceLeast the least room behind the ring
 */
public record GrooveShape(
        String name,
        RingSection section,
        Limits width,
        Limits root,
        Limits gap,
        Limits axialPlay,
        Length backClearanceLeast) {}
