package org.borewright.fit.shape;

import org.borewright.measure.Length;

/**
 * The top of a piston.
 *
 * @param compressionHeight from the pin's axis to the edge of the crown
 * @param domeHeight how far a dome stands above that edge; zero when flat or dished
 * @param domeVolume in cm³: what a dome takes from the chamber; negative for a dish
 */
public record Crown(Length compressionHeight, Length domeHeight, double domeVolume) {}
