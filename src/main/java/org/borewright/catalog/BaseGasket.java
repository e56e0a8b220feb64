package org.borewright.catalog;

import org.borewright.measure.Limits;

/**
 * A base gasket sold by itself, of another thickness than that of the kits.
 *
 * @param number its number
 * @param thickness compressed
 * @param servesCylinders how many cylinders one serves
 */
public record BaseGasket(PartNumber number, Limits thickness, int servesCylinders) implements Part {

    @Override
    public Kind kind() {
        return Kind.BASE_GASKET;
    }
}
