package org.borewright.catalog;

import java.util.Optional;
import org.borewright.measure.Length;

/**
 * One hole of an engine, in the maker's order.
 *
 * @param name as the maker counts: 1, 2, left, front
 * @param hand which hand of piston it takes
 * @param pitchToNext from its axis to the next hole's in the same casting; empty where no hole follows or they are separate
 */
public record Cylinder(String name, Hand hand, Optional<Length> pitchToNext) {}
