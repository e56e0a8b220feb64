package org.borewright.catalog;

import org.borewright.fit.shape.PinSeat;

/**
 * The small end of the rod.
 *
 * @param seat its bore and fit for the pin
 * @param pressed whether the pin is pressed in, so that no clips are needed
 * @param bearing whether a separate bearing is renewed with the pin
 */
public record RodEnd(PinSeat seat, boolean pressed, boolean bearing) {}
