package org.borewright.kit.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.RingSet;
import org.borewright.fit.Certainty;
import org.borewright.fit.Check;
import org.borewright.fit.ServiceWear;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.Match;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.RingChecks;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.Rereading;
import org.borewright.kit.hole.WornHoles;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;

/**
 * Turns the rules of a match round: how large a hole that nobody measured yet may read, with the gauge and at the temperature of the request.
 * Each diameter is asked of the very rules that the reading will meet, and between one that passes and one that does not the last that
 * passes is sought to the nanometre. Where metal is taken out, more wear never passes where less does not; in a wall that is never cut a
 * piston passes in a window, too tight below it and too loose above.
 */
final class LargestHoles {

    private static final Length NEXT = Length.ofNanometres(1);

    private final FitTable fits;
    private final Engine engine;
    private final MatchRequest request;
    private final List<Hole> unmeasured;
    private final WornHoles worn;
    private final Optional<Length> presentLeast;
    private final Rereading rereading;

    LargestHoles(FitTable fits, MatchRequest request, Match match) {
        this.fits = fits;
        this.engine = fits.shelf().engine();
        this.request = request;
        this.unmeasured = match.surveyed().stream()
                .filter(hole -> hole.at20() instanceof NotMeasured)
                .toList();
        this.worn = new WornHoles(engine, request.present());
        this.presentLeast = request.present().reliable().map(fits::smallestHole);
        this.rereading = new Rereading(engine.bore(), request.measuring(), presentLeast);
    }

    /** For a size; empty where every hole is measured. */
    Optional<LargestHole> of(SizeRow row) {
        Choice choice = row.choice().orElseThrow();
        if (unmeasured.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                row.isAsItIs()
                        ? asItIs(choice)
                        : new LargestHole(
                                Optional.empty(),
                                largest(diameter -> leastCertain(choice, diameter) == Certainty.CERTAIN),
                                largest(diameter -> leastCertain(choice, diameter) != Certainty.NO)));
    }

    private LargestHole asItIs(Choice choice) {
        Optional<Limits> certain = window(choice, certainty -> certainty == Certainty.CERTAIN);
        return new LargestHole(
                certain.map(Limits::least).filter(from -> from.isMoreThan(smallestBelieved())),
                certain.map(Limits::greatest),
                window(choice, certainty -> certainty != Certainty.NO).map(Limits::greatest));
    }

    /** What every hole may read; empty where the windows of two holes have nothing in common, or one has none. */
    private Optional<Limits> window(Choice choice, Predicate<Certainty> passes) {
        Length least = smallestBelieved();
        Length greatest = fits.plausible().greatest();
        for (Hole hole : unmeasured) {
            Optional<Limits> window = window(choice, hole, passes);
            least = least.max(window.map(Limits::least).orElse(greatest));
            greatest = greatest.min(window.map(Limits::greatest).orElse(least));
            if (window.isEmpty() || least.isMoreThan(greatest)) {
                return Optional.empty();
            }
        }
        return Optional.of(new Limits(least, greatest));
    }

    /** Of several grades each has its own window: that of the largest, and of those below as far down as each joins the next. */
    private Optional<Limits> window(Choice choice, Hole hole, Predicate<Certainty> passes) {
        return pistons(choice, hole).stream()
                .flatMap(piston -> window(
                        middle(piston.shape()),
                        diameter -> passes.test(worn.at(choice, read(hole, diameter), List.of(piston))
                                .certainty()))
                        .stream())
                .sorted(Comparator.comparing(Limits::greatest).reversed())
                .reduce((upper, lower) -> lower.greatest().plus(NEXT).isLessThan(upper.least())
                        ? upper
                        : new Limits(upper.least().min(lower.least()), upper.greatest()));
    }

    /** What reads as the middle of the holes in which a piston has its clearance: if any passes, that does. */
    private Length middle(PistonShape piston) {
        Limits tolerance = piston.diameter();
        Limits clearance = piston.clearance().limits();
        Length doubled = tolerance
                .least()
                .plus(tolerance.greatest())
                .plus(clearance.least())
                .plus(clearance.greatest());
        return rereading.asRead(doubled.halfRoundedDown());
    }

    private Optional<Limits> window(Length middle, Predicate<Length> passes) {
        Length from = middle.max(smallestBelieved());
        return passes.test(from)
                ? Optional.of(new Limits(smallest(from, passes), largest(from, passes)))
                : Optional.empty();
    }

    private Certainty leastCertain(Choice choice, Length diameter) {
        return unmeasured.stream()
                .map(hole -> worn.at(choice, read(hole, diameter), pistons(choice, hole))
                        .certainty())
                .reduce(Certainty.CERTAIN, Certainty::and);
    }

    private List<Piston> pistons(Choice choice, Hole hole) {
        return choice.pistons().get(engine.cylinders().indexOf(hole.cylinder()));
    }

    /** For new rings of a set: the wear and their gaps; the other conditions are no reading of the hole. */
    Optional<LargestHole> ofRings(RingSet rings) {
        PistonShape piston = fits.at(request.present().reliable().orElseThrow()).stream()
                .filter(choice -> choice.design().code().equals(rings.design()))
                .map(choice -> choice.pistons().get(0).get(0).shape())
                .findFirst()
                .orElseThrow();
        return unmeasured.isEmpty()
                ? Optional.empty()
                : Optional.of(new LargestHole(
                        Optional.empty(),
                        largest(diameter -> unmeasured.stream()
                                .map(hole -> read(hole, diameter))
                                .allMatch(hole -> runsOn(hole, rings, piston))),
                        Optional.empty()));
    }

    private boolean runsOn(Hole hole, RingSet rings, PistonShape piston) {
        Length present = presentLeast.orElseThrow();
        Length largest = hole.diameters().orElseThrow().greatest();
        Limits diameters = new Limits(present.min(largest), largest);
        List<Check> checks = new ArrayList<>(RingChecks.gapsInService(diameters, hole.ofReading(), rings, piston));
        checks.add(ServiceWear.check(
                largest, hole.ofReading(), present, engine.limits().wear()));
        return Check.allPass(checks);
    }

    /** The same hole with a reading. */
    private Hole read(Hole hole, Length diameter) {
        return rereading.of(hole, hole.survey().with(new SingleDiameter(diameter)));
    }

    /** From the smallest that is believed; empty where even that does not pass. */
    private Optional<Length> largest(Predicate<Length> passes) {
        Length least = smallestBelieved();
        return passes.test(least) ? Optional.of(largest(least, passes)) : Optional.empty();
    }

    private Length smallestBelieved() {
        return presentLeast.orElseGet(() -> fits.plausible().least());
    }

    /** From one that passes. */
    private Length largest(Length from, Predicate<Length> passes) {
        return Rereading.lastPassing(from, fits.plausible().greatest().plus(NEXT), passes);
    }

    /** Down from one that passes. */
    private Length smallest(Length from, Predicate<Length> passes) {
        return Rereading.lastPassing(from, smallestBelieved().minus(NEXT), passes);
    }
}
