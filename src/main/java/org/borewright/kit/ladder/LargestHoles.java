package org.borewright.kit.ladder;

import java.util.ArrayList;
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
import org.borewright.kit.hole.WornHoles;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.table.SizeRow;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.NotMeasured;
import org.borewright.measure.survey.SingleDiameter;

/**
 * Turns the rules of a match round: how large a hole that nobody measured yet may read, with the gauge and at the temperature of the request.
 * Each diameter is asked of the very rules that the reading will meet, and between one that passes and one that does not the last that
 * passes is sought to the nanometre; more wear never passes where less does not.
 */
final class LargestHoles {

    private final FitTable fits;
    private final Engine engine;
    private final MatchRequest request;
    private final List<Hole> unmeasured;
    private final WornHoles worn;
    private final Optional<Length> presentLeast;

    LargestHoles(FitTable fits, MatchRequest request, Match match) {
        this.fits = fits;
        this.engine = fits.shelf().engine();
        this.request = request;
        this.unmeasured = match.surveyed().stream()
                .filter(hole -> hole.at20() instanceof NotMeasured)
                .toList();
        this.worn = new WornHoles(engine, request.present());
        this.presentLeast = request.present().reliable().map(fits::smallestHole);
    }

    /** For a size; empty where every hole is measured. */
    Optional<LargestHole> of(SizeRow row) {
        Choice choice = row.choice().orElseThrow();
        return unmeasured.isEmpty()
                ? Optional.empty()
                : Optional.of(new LargestHole(
                        largest(diameter -> leastCertain(choice, diameter) == Certainty.CERTAIN),
                        largest(diameter -> leastCertain(choice, diameter) != Certainty.NO)));
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
                        largest(diameter -> unmeasured.stream()
                                .map(hole -> read(hole, diameter))
                                .allMatch(hole -> runsOn(hole, rings, piston))),
                        Optional.empty()));
    }

    private boolean runsOn(Hole hole, RingSet rings, PistonShape piston) {
        Length present = presentLeast.orElseThrow();
        Length largest = hole.diameters().orElseThrow().greatest();
        Limits diameters = new Limits(present.min(largest), largest);
        List<Check> checks = new ArrayList<>(RingChecks.gapsInService(diameters, hole.uncertainty(), rings, piston));
        checks.add(ServiceWear.check(
                largest, hole.uncertainty(), present, engine.limits().wear()));
        return Check.allPass(checks);
    }

    /** The same hole with a reading. */
    private Hole read(Hole hole, Length diameter) {
        CylinderSurvey survey = hole.survey();
        return Hole.of(
                engine.bore(),
                hole.cylinder(),
                new CylinderSurvey(survey.cylinder(), new SingleDiameter(diameter), survey.wall(), survey.findings()),
                request.measuring(),
                presentLeast);
    }

    /** From the smallest that is believed; empty where even that does not pass. */
    private Optional<Length> largest(Predicate<Length> passes) {
        Limits believed = fits.plausible();
        long least = presentLeast.orElse(believed.least()).nanometres();
        long most = believed.greatest().nanometres();
        if (!passes.test(Length.ofNanometres(least))) {
            return Optional.empty();
        }
        while (least < most) {
            long middle = most - (most - least) / 2;
            if (passes.test(Length.ofNanometres(middle))) {
                least = middle;
            } else {
                most = middle - 1;
            }
        }
        return Optional.of(Length.ofNanometres(least));
    }
}
