package org.borewright.catalog;

import org.borewright.fit.shape.GasketShape;
import org.borewright.measure.Length;

/**
 * The gaskets of a rebuild.
 *
 * @param number its number
 * @param shape its dimensions
 * @param servesCylinders how many cylinders one kit serves
 */
public record GasketKit(PartNumber number, GasketShape shape, int servesCylinders) implements Part {

    /** Whether there is a base gasket in it, and so a joint for one. */
    public boolean holdsBase() {
        return shape.baseThickness().greatest().isMoreThan(Length.ZERO);
    }

    @Override
    public Kind kind() {
        return Kind.GASKET_KIT;
    }
}
