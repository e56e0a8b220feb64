package org.borewright.fit;

import java.util.Optional;
import org.borewright.fit.shape.WallShape;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.survey.Wall;

/**
 * The wall left around a hole after the largest finish, less the centring error. Source: geometry; the least wall is the engine's.
 * With a sleeve: (outside − finish)/2 − e. Without: surveyed least wall − (finish − present)/2 − e.
 */
public final class WallLeft {

    private static final String SLEEVE_NOT_KNOWN =
            "sleeved before: the outside diameter of that sleeve is not known; measure it";
    private static final String NOT_SURVEYED =
            "the wall around this hole was not surveyed; measure its least thickness";

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
     * The wall of one hole against the engine's least; a hold where it cannot be known, nothing where the engine states no least. A wall or
     * sleeve that was measured since is known only as well as it was measured; one as made is the maker's.
     *
     * @param present the smallest diameter of the hole now
     */
    public static Optional<Check> check(
            WallShape made, Wall found, Length present, Length finish, Length centringError) {
        return made.wallLeast().map(least -> {
            if (found.sleevedBefore()) {
                return found.sleeveOutside()
                        .<Check>map(outside -> left(ofSleeve(outside, finish, centringError), least)
                                .within(ofSleeveMeasured().halfRoundedUp()))
                        .orElseGet(() -> Rule.WALL_LEFT.unknown("", SLEEVE_NOT_KNOWN));
            }
            return made.sleeveOutside()
                    .map(outside -> left(ofSleeve(outside, finish, centringError), least))
                    .or(() -> found.least()
                            .map(wall -> left(ofSurveyed(wall, present, finish, centringError), least)
                                    .within(CommonPractice.wallUncertainty())))
                    .<Check>map(check -> check)
                    .orElseGet(() -> Rule.WALL_LEFT.unknown("", NOT_SURVEYED));
        });
    }

    private static Comparison left(Length wall, Length least) {
        return Rule.WALL_LEFT.atLeast("", wall, least);
    }

    /** The expanded uncertainty of the outside of a sleeve, which a micrometer takes: half of it is in the wall. */
    private static Length ofSleeveMeasured() {
        return Gauge.Kind.MICROMETER.usual().expandedUncertainty();
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
