package org.borewright.fit;

import java.util.List;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.PinShape;
import org.borewright.measure.Limits;

/** The wrist pin in piston and rod: clearance, or press below zero, from the limits of both (fits as in ISO 286-1). */
public final class PinFit {

    private PinFit() {}

    /** The pin in the piston. */
    public static List<Comparison> inPiston(PinShape pin, PinSeat seat) {
        return check(pin, seat, Rule.PIN_IN_PISTON_LEAST, Rule.PIN_IN_PISTON_GREATEST);
    }

    /** The pin in the rod. */
    public static List<Comparison> inRod(PinShape pin, PinSeat seat) {
        return check(pin, seat, Rule.PIN_IN_ROD_LEAST, Rule.PIN_IN_ROD_GREATEST);
    }

    /** Hole less pin, worst case both ways. */
    public static Limits clearance(PinShape pin, PinSeat seat) {
        return seat.bore().minus(pin.outside());
    }

    private static List<Comparison> check(PinShape pin, PinSeat seat, Rule least, Rule greatest) {
        Limits clearance = clearance(pin, seat);
        return List.of(
                least.atLeast("", clearance.least(), seat.fit().least()),
                greatest.atMost("", clearance.greatest(), seat.fit().greatest()));
    }
}
