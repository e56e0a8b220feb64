package org.borewright.fit.shape;

import org.borewright.measure.Limits;

/**
 * A wrist pin.
 *
 * @param outside its diameter
 * @param length its length
 */
public record PinShape(Limits outside, Limits length) {}
