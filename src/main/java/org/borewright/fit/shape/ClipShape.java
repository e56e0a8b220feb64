package org.borewright.fit.shape;

import org.borewright.measure.Limits;

/**
 * A round wire clip.
 *
 * @param wire the diameter of its wire
 */
public record ClipShape(Limits wire) {}
