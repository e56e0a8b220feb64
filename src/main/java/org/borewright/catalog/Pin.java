package org.borewright.catalog;

import org.borewright.fit.shape.PinShape;

/**
 * A wrist pin.
 *
 * @param number its number
 * @param design the piston design it is made for
 * @param shape its dimensions
 */
public record Pin(PartNumber number, String design, PinShape shape) implements Part {

    @Override
    public Kind kind() {
        return Kind.PIN;
    }
}
