package org.borewright.kit.bench;

import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.measure.Length;

/**
 * A piston in hand, as it was noted.
 *
 * @param tag what it is marked with, to tell it from the others
 * @param part the number it was bought by
 * @param diameter as the gauge showed it, at gauge height across the thrust faces
 * @param milligrams its mass, weighed as the set was; empty where it was not weighed
 */
public record PistonReading(String tag, Piston part, Length diameter, Optional<Long> milligrams) {}
