package org.borewright.kit.choice;

import java.util.List;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;

/**
 * How often an engine can be rebuilt again after a size.
 *
 * @param byMetal larger sizes that wall, bridge and largest oversize allow
 * @param byPistons those of them for which pistons exist
 */
public record RebuildsLeft(int byMetal, int byPistons) {

    /** Counts the larger sizes of an engine: by metal those that bridge, spigot and sleeve bear, by pistons those of them made. */
    static RebuildsLeft after(Shelf shelf, Size size) {
        List<Size> larger = shelf.sizes().stream()
                .filter(other -> other.compareTo(size) > 0 && isAllowed(shelf.engine(), other))
                .toList();
        long made = larger.stream().filter(other -> isMade(shelf, other)).count();
        return new RebuildsLeft(larger.size(), Math.toIntExact(made));
    }

    private static boolean isAllowed(Engine engine, Size size) {
        return ChoiceFinder.ofSize(engine, size).isEmpty()
                && engine.build().construction().mayBeBored()
                && Check.allPass(MetalChecks.ofHole(engine, engine.newBore(size).greatest()));
    }

    private static boolean isMade(Shelf shelf, Size size) {
        return shelf.parts().pistons().stream()
                .anyMatch(piston -> piston.size().equals(size.label()) && Supply.isSupplied(shelf, piston.number()));
    }
}
