package org.borewright.fit;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
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
    private static final String NO_LEAST =
            "nobody states how much wall this engine needs; ask its maker, or leave the hole as it is";
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
     * The wall of one hole against the engine's least; a hold where it cannot be known, nothing where the engine states no least and
     * nobody told of a wall. A wall or sleeve that was measured since is known only as well as it was measured; one as made is the
     * maker's. Where a sleeve and the least wall are both known the smaller counts.
     *
     * @param present the smallest diameter of the hole now
     */
    public static Optional<Check> check(
            WallShape made, Wall found, Length present, Length finish, Length centringError) {
        if (found.sleevedBefore() && found.sleeveOutside().isEmpty()) {
            return Optional.of(Rule.WALL_LEFT.unknown("", SLEEVE_NOT_KNOWN));
        }
        boolean isTold = found.sleevedBefore() || found.least().isPresent();
        return made.wallLeast()
                .map(least -> known(made, found, present, finish, centringError)
                        .min(Comparator.comparing(Known::proven))
                        .<Check>map(wall -> left(wall.left, least).within(wall.uncertainty))
                        .orElseGet(() -> Rule.WALL_LEFT.unknown("", NOT_SURVEYED)))
                .or(() -> Optional.of(Rule.WALL_LEFT.unknown("", NO_LEAST)).filter(hold -> isTold));
    }

    private record Known(Length left, Length uncertainty) {

        Length proven() {
            return left.minus(uncertainty);
        }
    }

    private static Stream<Known> known(
            WallShape made, Wall found, Length present, Length finish, Length centringError) {
        Optional<Known> inSleeve = found.sleevedBefore()
                ? found.sleeveOutside()
                        .map(outside -> new Known(
                                ofSleeve(outside, finish, centringError),
                                ofSleeveMeasured().halfRoundedUp()))
                : made.sleeveOutside().map(outside -> new Known(ofSleeve(outside, finish, centringError), Length.ZERO));
        Optional<Known> surveyed = found.least()
                .map(wall ->
                        new Known(ofSurveyed(wall, present, finish, centringError), CommonPractice.wallUncertainty()));
        return Stream.concat(inSleeve.stream(), surveyed.stream());
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
                .flatMap(outside ->
                        made.wallLeast().map(least -> left(ofSleeve(outside, finish, centringError), least)));
    }
}
