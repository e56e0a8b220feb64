package org.borewright.catalog;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * A head gasket sold by itself, of another thickness than that of the kits.
 *
 * @param number its number
 * @param opening the hole in it
 * @param thickness compressed
 * @param margin how far the opening must stand back from the hole all round
 * @param servesCylinders how many cylinders one serves
 */
public record HeadGasket(PartNumber number, Limits opening, Limits thickness, Length margin, int servesCylinders)
        implements Part {

    @Override
    public Kind kind() {
        return Kind.HEAD_GASKET;
    }
}
