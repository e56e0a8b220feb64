package org.borewright.kit.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.RingBore;
import org.borewright.fit.RingFaceOnBore;
import org.borewright.fit.RingGap;
import org.borewright.fit.RingInGroove;
import org.borewright.fit.Rule;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.BoreSurface;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.RingShape;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;

/** A ring set on a piston: every groove has its ring, and every ring suits groove, hole and surface. */
public final class RingChecks {

    private RingChecks() {}

    /** The rings on a piston, in every hole it may run in: exact, part against part. */
    static List<Check> between(RingSet rings, PistonShape piston, BoreSurface surface) {
        List<Check> checks = new ArrayList<>();
        checks.add(RingBore.check(rings.nominalBore(), piston.nominalBore()));
        for (GrooveShape groove : piston.grooves()) {
            Optional<RingShape> ring = ringFor(rings, groove);
            ring.ifPresentOrElse(
                    fitted -> checks.addAll(inGroove(fitted, groove, piston.finishes(), surface)),
                    () -> checks.add(new Unchecked(
                            Rule.RING_SECTION, groove.name(), Outcome.UNKNOWN, "the set has no ring for this groove")));
        }
        return checks;
    }

    /** The gaps of the rings in any of the holes that one may become. */
    public static List<Check> gapsInAny(Limits holes, Uncertainty uncertainty, RingSet rings, PistonShape piston) {
        return ofEach(rings, piston, (ring, groove) -> RingGap.check(holes, uncertainty, ring, groove));
    }

    /** The gaps of the rings in a measured hole. */
    public static List<Check> gapsIn(Limits hole, Uncertainty uncertainty, RingSet rings, PistonShape piston) {
        return ofEach(rings, piston, (ring, groove) -> RingGap.checkInHole(hole, uncertainty, ring, groove));
    }

    /** The gaps of the rings in a worn hole that is to run on. */
    public static List<Check> gapsInService(Limits hole, Uncertainty uncertainty, RingSet rings, PistonShape piston) {
        return ofEach(rings, piston, (ring, groove) -> RingGap.checkInService(hole, uncertainty, ring, groove));
    }

    /** The rings that must be filed for a measured hole, each of those alone. */
    public static List<Check> filedIn(
            Limits hole, Uncertainty uncertainty, RingSet rings, PistonShape piston, boolean areFiled) {
        return ofEach(
                rings,
                piston,
                (ring, groove) -> RingGap.fileTo(hole, hole.width(), uncertainty, ring, groove).stream()
                        .map(limits -> RingGap.checkFiled(hole, uncertainty, ring, groove, areFiled))
                        .toList());
    }

    private static List<Check> ofEach(
            RingSet rings, PistonShape piston, BiFunction<RingShape, GrooveShape, List<? extends Check>> asked) {
        List<Check> checks = new ArrayList<>();
        for (GrooveShape groove : piston.grooves()) {
            ringFor(rings, groove).ifPresent(ring -> checks.addAll(asked.apply(ring, groove)));
        }
        return checks;
    }

    private static List<Check> inGroove(RingShape ring, GrooveShape groove, Limits holes, BoreSurface surface) {
        List<Check> checks = new ArrayList<>(RingInGroove.check(ring, groove, holes.least()));
        checks.add(RingFaceOnBore.check(groove.name(), ring.face(), surface));
        checks.addAll(RingGap.check(holes, Uncertainty.NONE, ring, groove));
        return checks;
    }

    private static Optional<RingShape> ringFor(RingSet rings, GrooveShape groove) {
        return rings.rings().stream()
                .filter(ring -> ring.groove().equals(groove.name()))
                .findFirst();
    }
}
