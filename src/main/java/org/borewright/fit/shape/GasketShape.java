package org.borewright.fit.shape;

import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * Head and base gasket of one rebuild.
 *
 * @param opening the hole in the head gasket
 * @param headThickness the head gasket, compressed
 * @param baseThickness the base gasket, compressed; zero where the block has none
 * @param margin how far the opening must stand back from the hole all round
 */
public record GasketShape(Limits opening, Limits headThickness, Limits baseThickness, Length margin) {}
