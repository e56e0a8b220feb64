package org.borewright.measure.survey;

import org.borewright.measure.Length;

/**
 * One diameter of a grid and where it was taken.
 *
 * @param depth from the deck
 * @param axis the direction
 * @param diameter as the gauge showed it
 */
public record Reading(Length depth, Axis axis, Length diameter) {}
