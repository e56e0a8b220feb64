package org.borewright.catalog.load.sense;

import java.util.stream.Stream;
import org.borewright.catalog.Piston;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;

/**
 * Whether what is on the shelf of an engine goes together, by the rules that a match asks. A part that no rule lets into the engine it
 * is listed for is a slip in a file, and is told as such.
 */
public final class PhysicalSense {

    private PhysicalSense() {}

    /** What the rules hold against a shelf; nothing when all of it goes together. */
    public static Stream<Objection> objections(Shelf shelf) {
        return Stream.of(
                        PistonSense.objections(shelf),
                        RingSense.objections(shelf),
                        PinSense.objections(shelf),
                        DeckSense.objections(shelf),
                        TorqueSense.objections(shelf))
                .flatMap(objections -> objections);
    }

    /** The pistons of a design at a size: two where left differs from right, three where there are grades. */
    static Stream<Piston> pistons(Shelf shelf, String design, String size) {
        return shelf.parts().pistons().stream()
                .filter(piston -> piston.design().equals(design))
                .filter(piston -> piston.size().equals(size));
    }

    /** The pistons of every design at standard. */
    static Stream<Piston> atStandard(Shelf shelf) {
        String standard = shelf.sizes().stream().findFirst().map(Size::label).orElse("");
        return shelf.parts().pistons().stream().filter(piston -> piston.size().equals(standard));
    }
}
