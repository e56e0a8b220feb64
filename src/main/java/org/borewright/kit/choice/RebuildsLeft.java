package org.borewright.kit.choice;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.measure.Length;

/**
 * How often an engine can be rebuilt again after a size.
 *
 * @param byMetal larger sizes that wall, bridge and largest oversize allow
 * @param byPistons those of them for which pistons exist, with rings, pin and clips that fit them: what nobody could kit is no rebuild
 */
public record RebuildsLeft(int byMetal, int byPistons) {

    private static final RebuildsLeft NONE = new RebuildsLeft(0, 0);

    /**
     * Counts the larger sizes for every size of a shelf: by metal those that bridge, spigot and the wall of each hole bear, by pistons
     * those of them made with all that goes with a piston. A size is left out where nobody can know whether the wall bears a larger one.
     *
     * @param choices for each size every maker's pistons
     * @param walls the wall left around each hole at a finish, where the engine states a least
     */
    public static Map<Size, RebuildsLeft> of(
            Shelf shelf, Map<Size, List<Choice>> choices, Function<Length, List<Check>> walls) {
        Map<Size, RebuildsLeft> left = new HashMap<>();
        List<Size> sizes = shelf.sizes();
        RebuildsLeft after = NONE;
        for (int i = sizes.size() - 1; i >= 0; i--) {
            Size size = sizes.get(i);
            left.put(size, after);
            List<Choice> made = choices.getOrDefault(size, List.of());
            Outcome borne = borne(shelf.engine(), size, finish(shelf.engine(), size, made), walls);
            if (borne == Outcome.UNKNOWN) {
                break;
            }
            after = borne == Outcome.IN
                    ? after.andOne(
                            made.stream().anyMatch(choice -> !choice.outfits().isEmpty()))
                    : after;
        }
        return Collections.unmodifiableMap(left);
    }

    /** How many more these are than those after a larger size. */
    public RebuildsLeft less(RebuildsLeft after) {
        return new RebuildsLeft(byMetal - after.byMetal, byPistons - after.byPistons);
    }

    private RebuildsLeft andOne(boolean canBeKitted) {
        return new RebuildsLeft(byMetal + 1, canBeKitted ? byPistons + 1 : byPistons);
    }

    /** The least that the hole of a size can grow to: with the pistons made for it, else as a new hole. */
    private static Length finish(Engine engine, Size size, List<Choice> made) {
        return made.stream()
                .map(choice -> choice.largest().shape().largestFinish())
                .min(Length::compareTo)
                .orElse(engine.newBore(size).greatest());
    }

    /** Whether the metal bears a finish: a wall too close to call is not counted on. */
    private static Outcome borne(Engine engine, Size size, Length finish, Function<Length, List<Check>> walls) {
        if (!ChoiceFinder.ofSize(engine, size).isEmpty()
                || !engine.build().construction().mayBeBored()
                || !Check.allPass(MetalChecks.ofEveryHole(engine, finish))) {
            return Outcome.OUT;
        }
        List<Check> around = walls.apply(finish);
        if (!Check.ended(around, Outcome.OUT).isEmpty()
                || !Check.ended(around, Outcome.TOO_CLOSE).isEmpty()) {
            return Outcome.OUT;
        }
        return Check.allPass(around) ? Outcome.IN : Outcome.UNKNOWN;
    }
}
