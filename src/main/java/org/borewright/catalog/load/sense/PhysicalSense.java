package org.borewright.catalog.load.sense;

import java.util.stream.Stream;
import org.borewright.catalog.Shelf;

/**
 * Whether what is on the shelf of an engine goes together, by the rules that a match asks. A part that nobody could ever use in the
 * engine it is listed for is a slip in a file, and is refused. A part that goes at one size and not at another, or with one part and not
 * with another, is none: a match finds what goes, and blocks what does not.
 */
public final class PhysicalSense {

    private PhysicalSense() {}

    /** What the rules hold against a shelf; nothing when all of it goes together. */
    public static Stream<Objection> objections(Shelf shelf) {
        return Stream.of(
                        PistonSense.objections(shelf),
                        RingSense.objections(shelf),
                        PinSense.objections(shelf),
                        MetalSense.objections(shelf),
                        DeckSense.objections(shelf),
                        TorqueSense.objections(shelf))
                .flatMap(objections -> objections);
    }
}
