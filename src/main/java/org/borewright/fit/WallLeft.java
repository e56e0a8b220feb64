package org.borewright.fit;

import java.util.Optional;
import org.borewright.fit.shape.WallShape;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Wall;

/**
 * The wall left around a hole after the largest finish, less the centring error. Source: geometry; the least wall is the engine's.
 * With a sleeve: (outside − finish)/2 − e. Without: surveyed least wall − (finish − present)/2 − e.
 */
public final class WallLeft {

    private WallLeft() {}

    /** The wall left in a sleeve of an outside diameter, rounded down. */
    public static Length ofSleeve(Length outside, Length finish, Length centringError) {
        return outside.minus(finish).halfRoundedDown().minus(centringError);
    }

    /** The wall left of a surveyed wall around a hole of the present diameter, rounded down. */
    public static Length ofSurveyed(Length wall, Length present, Length finish, Length centringError) {
        return wall.minus(finish.minus(present).halfRoundedUp()).minus(centringError);
    }

    /**
     * The wall of one hole against the engine's least; a hold where it cannot be known, nothing where the engine states no least.
     *
     * @param present the smallest diameter of the hole now
     */
    public static Optional<Check> check(
            WallShape made, Wall found, Length present, Length finish, Length centringError) {
        return made.wallLeast().map(least -> {
            Optional<Length> sleeve = found.sleevedBefore() ? found.sleeveOutside() : made.sleeveOutside();
            Optional<Length> left = sleeve.map(outside -> ofSleeve(outside, finish, centringError))
                    .or(() -> found.sleevedBefore()
                            ? Optional.empty()
                            : found.least().map(wall -> ofSurveyed(wall, present, finish, centringError)));
            return left.<Check>map(wall -> Rule.WALL_LEFT.atLeast("", wall, least))
                    .orElseGet(() -> Rule.WALL_LEFT.unknown(
                            "",
                            found.sleevedBefore()
                                    ? "sleeved before: the outside diameter of that sleeve is not known; measure it"
                                    : "the wall around this hole was not surveyed; measure its least thickness"));
        });
    }

    /** The wall left of the spigot below the flange; nothing where the engine has none. */
    public static Optional<Comparison> checkSpigot(WallShape made, Length finish, Length centringError) {
        return made.spigotOutside()
                .flatMap(outside -> made.spigotWallLeast()
                        .map(least -> Rule.SPIGOT_WALL.atLeast("", ofSleeve(outside, finish, centringError), least)));
    }

    /** The wall left of the sleeve as made; nothing where the engine has none or states no least wall. */
    public static Optional<Comparison> checkSleeve(WallShape made, Length finish, Length centringError) {
        return made.sleeveOutside()
                .flatMap(outside -> made.wallLeast()
                        .map(least -> Rule.WALL_LEFT.atLeast("", ofSleeve(outside, finish, centringError), least)));
    }
}
