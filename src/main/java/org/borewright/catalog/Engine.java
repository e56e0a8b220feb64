package org.borewright.catalog;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.borewright.fit.Displacement;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.WallShape;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * An engine that is rebuilt.
 *
 * @param name what it is called
 * @param build how it is built
 * @param cylinders its holes in the maker's order, at least one
 * @param bore the hole and how it is worked
 * @param wall the metal around the holes
 * @param deck everything from crankshaft to head
 * @param rodEnd the small end
 * @param limits in service
 */
public record Engine(
        EngineName name,
        Build build,
        List<Cylinder> cylinders,
        BoreSpec bore,
        WallShape wall,
        DeckShape deck,
        RodEnd rodEnd,
        ServiceLimits limits) {

    /** @throws IllegalArgumentException if it has no cylinder */
    public Engine {
        cylinders = List.copyOf(cylinders);
        if (cylinders.isEmpty()) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "engine %s has no cylinder", name.code()));
        }
    }

    /** Its code. */
    public String code() {
        return name.code();
    }

    /** The displacement of the whole engine in cm³ at a bore. */
    public double displacement(Length atBore) {
        return Displacement.ofOne(atBore, deck.stroke()) * cylinders.size();
    }

    /** The cylinder of a name; empty when the engine has none such. */
    public Optional<Cylinder> cylinder(String named) {
        return cylinders.stream().filter(hole -> hole.name().equals(named)).findFirst();
    }

    /** Whether each hole is in a barrel of its own, that can be put on another engine: barrels of one casting come off together. */
    public boolean hasSeparateBarrels() {
        return build.construction().isBarrel()
                && cylinders.stream().allMatch(hole -> hole.pitchToNext().isEmpty());
    }

    /** The limits of a new hole at a size. */
    public Limits newBore(Size size) {
        return bore.asNew().plus(size.oversize());
    }
}
