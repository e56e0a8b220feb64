package org.borewright.catalog.load.sense;

import static java.util.Comparator.comparing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.shape.PistonShape;

/**
 * The smallest size a piston design is offered in. It takes the least of wall, bridge, gasket and head: what has no room for it has
 * room for no piston of the design. A larger size that finds no room is blocked in a match, and is no slip in a file; nor is one that
 * needs further engine work, so it is passed over.
 *
 * @param design the design
 * @param size its smallest size without further engine work
 * @param largest its piston of that size that may run in the largest hole: of left and right, of the grades
 */
record SmallestOffered(PistonDesign design, Size size, PistonShape largest) {

    /** One for each design that is offered in any size. */
    static List<SmallestOffered> of(Shelf shelf) {
        return shelf.parts().designs().stream()
                .flatMap(design -> shelf.sizes().stream()
                        .filter(size -> !size.furtherWork())
                        .flatMap(size -> of(shelf, design, size).stream())
                        .limit(1))
                .toList();
    }

    private static Optional<SmallestOffered> of(Shelf shelf, PistonDesign design, Size size) {
        return pistons(shelf, design.code(), size.label())
                .map(Piston::shape)
                .max(comparing(PistonShape::largestFinish))
                .map(largest -> new SmallestOffered(design, size, largest));
    }

    /** The pistons of a design at a size: two where left differs from right, three where there are grades. */
    static Stream<Piston> pistons(Shelf shelf, String design, String size) {
        return shelf.parts().pistons().stream()
                .filter(piston -> piston.design().equals(design))
                .filter(piston -> piston.size().equals(size));
    }

    /** As named in an objection, such as {@code NORHEIM-OS4 at standard}. */
    String words() {
        return "%s at %s".formatted(design.code(), size.label());
    }
}
