package org.borewright.catalog;

import org.borewright.fit.shape.GasketShape;

/**
 * The gaskets of a rebuild.
 *
 * @param number its number
 * @param shape its dimensions
 * @param servesCylinders how many cylinders one kit serves
 */
public record GasketKit(PartNumber number, GasketShape shape, int servesCylinders) implements Part {

    @Override
    public Kind kind() {
        return Kind.GASKET_KIT;
    }
}
