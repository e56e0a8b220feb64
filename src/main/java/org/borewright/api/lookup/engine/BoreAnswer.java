package org.borewright.api.lookup.engine;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.util.Optional;
import org.borewright.api.shown.Flattery;
import org.borewright.api.shown.ShownCorrection;
import org.borewright.api.shown.ShownLength;
import org.borewright.api.shown.ShownLimits;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Engine;
import org.borewright.fit.shape.WallShape;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * The hole of an engine and the metal around it.
 *
 * @param nominal at standard
 * @param asNew the limits of a new hole at standard
 * @param labelNames whether a size label names the piston or the bore
 * @param honeStock left by the bar on the diameter
 * @param honeCleanUp taken by the hone beyond the largest reading, on the diameter
 * @param centringError how far the bar may miss the original axis
 * @param largestOversize the most that may be taken
 * @param expansion of the wall, in millionths per kelvin
 * @param expansionUncertainty the standard uncertainty of that
 * @param sleeveOutside the outside diameter of sleeve or liner as made; absent for a hole in the block itself
 * @param wallLeast the least wall that must be left; absent where the largest oversize stands for it
 * @param spigotOutside the outside diameter of the spigot; absent where there is none
 * @param spigotWallLeast the least wall that must be left of the spigot
 * @param bridgeLeast the least metal that must be left between two holes; absent where they share none
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BoreAnswer(
        ShownLength nominal,
        ShownLimits asNew,
        String labelNames,
        ShownLength honeStock,
        ShownLength honeCleanUp,
        ShownLength centringError,
        ShownLength largestOversize,
        BigDecimal expansion,
        BigDecimal expansionUncertainty,
        @Nullable ShownLength sleeveOutside,
        @Nullable ShownLength wallLeast,
        @Nullable ShownLength spigotOutside,
        @Nullable ShownLength spigotWallLeast,
        @Nullable ShownLength bridgeLeast) {

    static BoreAnswer of(Engine engine, LengthUnit unit) {
        BoreSpec bore = engine.bore();
        WallShape wall = engine.wall();
        return new BoreAnswer(
                ShownLength.of(bore.nominal(), unit),
                ShownLimits.of(bore.asNew(), unit),
                bore.labelNames().label(),
                ShownLength.of(bore.honeStock(), unit),
                ShownLength.of(bore.honeCleanUp(), unit),
                ShownLength.of(bore.centringError(), unit, Flattery.UNCERTAINTY),
                ShownLength.of(bore.largestOversize(), unit, Flattery.UPPER_LIMIT),
                ShownCorrection.millionths(bore.expansion().perKelvin()),
                ShownCorrection.millionths(bore.expansion().standardUncertainty()),
                ShownLength.of(wall.sleeveOutside(), unit),
                least(wall.wallLeast(), unit),
                ShownLength.of(wall.spigotOutside(), unit),
                least(wall.spigotWallLeast(), unit),
                least(wall.bridgeLeast(), unit));
    }

    private static @Nullable ShownLength least(Optional<Length> limit, LengthUnit unit) {
        return limit.map(known -> ShownLength.of(known, unit, Flattery.LOWER_LIMIT))
                .orElse(null);
    }
}
