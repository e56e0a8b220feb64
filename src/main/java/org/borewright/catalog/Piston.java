package org.borewright.catalog;

import java.util.Optional;
import org.borewright.fit.shape.PistonShape;

/**
 * A piston of one size.
 *
 * @param number its number
 * @param design what it shares with its other sizes
 * @param size the label of the size it is for
 * @param hand the holes it goes into
 * @param grade A, B or C at standard; empty where the engine has no grades. A grade is not an oversize
 * @param shape its dimensions
 */
public record Piston(
        PartNumber number, String design, String size, Hand hand, Optional<String> grade, PistonShape shape)
        implements Part {

    @Override
    public Kind kind() {
        return Kind.PISTON;
    }
}
