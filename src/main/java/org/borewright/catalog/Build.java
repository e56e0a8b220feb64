package org.borewright.catalog;

import org.borewright.fit.shape.BoreSurface;
import org.borewright.measure.LengthUnit;

/**
 * How an engine is built.
 *
 * @param strokes two or four
 * @param layout how the cylinders stand
 * @param construction how the holes are made
 * @param surface what the rings run on
 * @param torquePlate whether it is bored, honed and measured with a plate on, tightened as the head is
 * @param steps the unit its oversizes step in
 */
public record Build(
        Strokes strokes,
        Layout layout,
        Construction construction,
        BoreSurface surface,
        boolean torquePlate,
        LengthUnit steps) {}
