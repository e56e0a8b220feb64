package org.borewright.fit.shape;

import java.util.Optional;
import org.borewright.measure.Length;

/**
 * The metal around a hole.
 *
 * @param sleeveOutside the outside diameter of the sleeve or liner as made; empty for a hole in the block itself
 * @param wallLeast the least wall that must be left; empty where the engine's largest size alone stands for it
 * @param spigotOutside the outside diameter of the spigot below the flange; empty where there is none
 * @param spigotWallLeast the least wall that must be left of the spigot
 * @param bridgeLeast the least bridge that must be left to the next hole; empty where holes do not share metal
 */
public record WallShape(
        Optional<Length> sleeveOutside,
        Optional<Length> wallLeast,
        Optional<Length> spigotOutside,
        Optional<Length> spigotWallLeast,
        Optional<Length> bridgeLeast) {}
