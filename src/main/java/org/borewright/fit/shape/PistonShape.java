package org.borewright.fit.shape;

import java.util.List;
import java.util.Optional;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;

/**
 * A piston as the rules see it.
 *
 * @param diameter its tolerance at gauge height, across the thrust faces
 * @param nominalBore the nominal bore it is made for: what a ring set must be made for too
 * @param clearance the window its maker asks for
 * @param crown height and volume above the pin
 * @param grooves its ring grooves from the top
 * @param pinSeat its pin bore and the fit asked for
 * @param clipSeat its clip grooves; empty where pins are pressed into the rod
 * @param mass least and greatest mass in milligrams
 */
public record PistonShape(
        Limits diameter,
        Length nominalBore,
        ClearanceWindow clearance,
        Crown crown,
        List<GrooveShape> grooves,
        PinSeat pinSeat,
        Optional<ClipSeat> clipSeat,
        MassRange mass) {

    /** Copies the grooves. */
    public PistonShape {
        grooves = List.copyOf(grooves);
    }

    /** The hole that the smallest piston in tolerance needs at target clearance: what a size must clean up to. */
    public Length finishForCleanUp() {
        return diameter.least().plus(clearance.target());
    }

    /** The holes at target clearance of all pistons in tolerance. */
    public Limits finishesOnTarget() {
        return new Limits(finishForCleanUp(), diameter.greatest().plus(clearance.target()));
    }

    /** The largest hole any piston in tolerance may run in: what gasket, wall and bridge must bear. */
    public Length largestFinish() {
        return diameter.greatest().plus(clearance.greatest());
    }

    /** The smallest hole any piston in tolerance may run in. */
    public Length smallestFinish() {
        return diameter.least().plus(clearance.least());
    }

    /** The holes this piston may run in. */
    public Limits finishes() {
        return new Limits(smallestFinish(), largestFinish());
    }
}
