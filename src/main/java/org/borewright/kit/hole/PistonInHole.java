package org.borewright.kit.hole;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Piston;
import org.borewright.fit.Check;
import org.borewright.fit.Clearance;
import org.borewright.fit.HoneWindow;
import org.borewright.fit.Outcome;
import org.borewright.fit.shape.PistonShape;
import org.borewright.measure.Limits;

/**
 * A piston, not measured yet, in a measured hole that is left as it is.
 *
 * @param hole as measured
 * @param piston anywhere in its tolerance
 */
public record PistonInHole(Hole hole, Piston piston) {

    /** The clearances that are too close to call, each with its hole; empty when there is none. */
    public List<Check> tooClose() {
        return Check.ended(Clearance.check(diameters(), hole.ofReading(), piston.shape()), Outcome.TOO_CLOSE).stream()
                .map(check -> check.at(hole.place()))
                .toList();
    }

    /**
     * The holes in which any piston of the number is proven when they are measured as this one was: at 20 °C, both limits inclusive. Empty
     * where its tolerance leaves no room for the uncertainty, which is taken at the largest hole, where it is greatest.
     */
    public Optional<Limits> proven() {
        PistonShape shape = piston.shape();
        double larger = (double) shape.largestFinish().nanometres()
                / diameters().greatest().nanometres();
        return hole.budget()
                .flatMap(budget -> HoneWindow.of(
                        shape.diameter(),
                        shape.clearance(),
                        budget.scaled(larger).expanded()));
    }

    private Limits diameters() {
        return hole.diameters().orElseThrow();
    }
}
