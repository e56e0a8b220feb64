package org.borewright.kit.rings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.catalog.Engine;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.ServiceWear;
import org.borewright.fit.ShapeShown;
import org.borewright.fit.Suitability;
import org.borewright.fit.Unchecked;
import org.borewright.fit.shape.PistonShape;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.choice.RingChecks;
import org.borewright.kit.choice.RingGapIn;
import org.borewright.kit.choice.Supply;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.hole.WornShape;
import org.borewright.kit.request.AsFound;
import org.borewright.kit.request.MatchRequest;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.Grid;
import org.borewright.measure.survey.QueriedGrid;

/** Asks what must be true of a hole and its piston for new rings alone to do (common practice), in the order a machinist asks. */
final class Conditions {

    private static final Suitability NOTHING_FOUND =
            new Suitability(Rule.NOTHING_TO_CUT, "", "nothing", "nothing", true);
    private static final Check PUT_RIGHT_FIRST =
            unknown(Rule.NOTHING_TO_CUT, "take smeared aluminium off and refit a loose sleeve, then measure again");
    private static final Check NO_DIAMETER =
            unknown(Rule.SERVICE_WEAR, "measure the hole: along two axes at three depths at the least");
    private static final Check QUERIED = unknown(Rule.SERVICE_WEAR, "read the queried places again");
    private static final Check NO_PRESENT_SIZE =
            unknown(Rule.SERVICE_WEAR, "find out the present size: from a record, or from a measured piston");
    private static final Check NO_TAPER = unknown(Rule.SERVICE_TAPER, ShapeShown.TOO_LITTLE_READ);
    private static final Check NO_OUT_OF_ROUND = unknown(Rule.SERVICE_OUT_OF_ROUND, ShapeShown.TOO_LITTLE_READ);
    private static final Check NO_PISTON =
            unknown(Rule.PRESENT_PISTON, "find out which piston is in the hole: its number, or whose design it is");
    private static final Check NO_CLEARANCE =
            unknown(Rule.SERVICE_CLEARANCE, "measure the present piston at its gauge height across the thrust faces");
    private static final Check NO_GROOVES =
            unknown(Rule.GROOVES, "clean the grooves and try a new ring in each: are they good or worn?");
    private static final Check NO_RING =
            unknown(Rule.SERVICE_RING_GAP, "find out which piston is in the hole: its rings are not known before");
    static final Check NO_RING_SUPPLIED = unknown(
            Rule.SERVICE_RING_GAP,
            "no ring set of the present size is supplied with pin and clips that fit this piston");
    static final Check NO_RING_AT_ALL =
            unknown(Rule.SERVICE_RING_GAP, "no ring set of the present size is supplied for any piston of this engine");
    private static final Check NO_RING_SOLD = unknown(
            Rule.SERVICE_RING_GAP,
            "the rings that were sold are not made for this piston: survey the engine anew as \"did not clean up\", and quote anew");
    private static final Check NO_GRID = unknown(
            Rule.SERVICE_RING_GAP,
            "measure the hole along two axes at three depths at the least, over the travel of the rings");
    private static final Check NO_RIDGE = unknown(
            Rule.RIDGE, "feel for a ridge above the travel of the top ring: is it off, there, or was there none?");
    private static final Check NO_GLAZE = unknown(Rule.GLAZE, "look whether the glaze is broken");
    private static final Check NEVER_HONED =
            new Unchecked(Rule.GLAZE, "", Outcome.NOT_CHECKED, "this wall is never honed");

    /** All of them are the same in every answer. */
    static final List<Check> UNTOLD = List.of(
            NOTHING_FOUND,
            PUT_RIGHT_FIRST,
            NO_DIAMETER,
            QUERIED,
            NO_PRESENT_SIZE,
            NO_TAPER,
            NO_OUT_OF_ROUND,
            NO_PISTON,
            NO_CLEARANCE,
            NO_GROOVES,
            NO_RING,
            NO_RING_SUPPLIED,
            NO_RING_AT_ALL,
            NO_RING_SOLD,
            NO_GRID,
            NO_RIDGE,
            NO_GLAZE,
            NEVER_HONED);

    private final Engine engine;
    private final MatchRequest request;
    private final Optional<Choice> choice;
    private final Optional<Length> present;
    private final boolean noRings;
    private final PistonInHole pistons;

    /**
     * For the holes of one request.
     *
     * @param design of the present pistons; empty when not known
     * @param choice that design at the present size; empty when either is not known
     */
    Conditions(FitTable fits, MatchRequest request, Optional<PistonDesign> design, Optional<Choice> choice) {
        this.engine = fits.shelf().engine();
        this.request = request;
        this.choice = choice;
        this.present = request.present().reliable().map(fits::smallestHole);
        this.noRings = request.present()
                .reliable()
                .filter(size -> noneIsSupplied(fits.shelf(), size))
                .isPresent();
        this.pistons = new PistonInHole(engine, request, design, choice);
    }

    private static Check unknown(Rule rule, String wayOut) {
        return new Unchecked(rule, "", Outcome.UNKNOWN, wayOut);
    }

    /** The conditions of every hole, the gaps for one ring set. */
    List<RingsInHole> of(List<Hole> holes, Optional<RingSet> rings) {
        List<RingsInHole> asked = new ArrayList<>(holes.size());
        for (Hole hole : holes) {
            asked.add(of(asked.size(), hole, rings));
        }
        return asked;
    }

    /** The conditions of one hole, where it stands in the engine's order. */
    RingsInHole of(int index, Hole hole, Optional<RingSet> rings) {
        List<Check> checks = new ArrayList<>(16);
        checks.add(findings(hole));
        checks.add(wear(hole));
        addShape(checks, hole);
        checks.add(pistons.kind(index).orElse(NO_PISTON));
        checks.add(pistons.clearance(index, hole).orElse(NO_CLEARANCE));
        addAsFound(checks, request.asFound().get(index));
        Optional<Fitted> fitted = rings.filter(
                        set -> ShapeShown.by(hole.at20(), engine.deck().stroke()))
                .map(set -> new Fitted(hole, set, pistonOf(index)));
        fitted.ifPresentOrElse(
                ring -> checks.addAll(ring.checks(request.rings().filed())),
                () -> checks.add(rings.isEmpty() ? wanting() : NO_GRID));
        return new RingsInHole(
                hole.name(), pistons.measured(index), fitted.map(Fitted::gaps).orElse(List.of()), checks);
    }

    private Check findings(Hole hole) {
        if (hole.survey().has(Finding.Weight.HOLD)) {
            return PUT_RIGHT_FIRST;
        }
        if (hole.survey().findings().isEmpty()) {
            return NOTHING_FOUND;
        }
        List<Finding> cut =
                hole.survey().findings().stream().filter(this::isToBeCut).toList();
        String found = cut.stream().map(finding -> finding.kind().label()).collect(Collectors.joining(", "));
        return cut.isEmpty()
                ? NOTHING_FOUND
                : new Suitability(Rule.NOTHING_TO_CUT, "", found, NOTHING_FOUND.asked(), false);
    }

    /** By the bar or by the hone: a poor surface is honed, and a hone takes metal too. */
    private boolean isToBeCut(Finding finding) {
        Finding.Weight weight = finding.weightIn(engine.build().construction().mayBeBored());
        return weight == Finding.Weight.MACHINABLE
                || weight == Finding.Weight.BEYOND_MACHINING
                || weight == Finding.Weight.HONE;
    }

    private Check wear(Hole hole) {
        if (hole.diameters().isEmpty()) {
            return hole.at20() instanceof QueriedGrid ? QUERIED : NO_DIAMETER;
        }
        return present.<Check>map(least -> ServiceWear.check(
                        hole.diameters().get().greatest(),
                        hole.ofReading(),
                        least,
                        engine.limits().wear()))
                .orElse(NO_PRESENT_SIZE);
    }

    private void addShape(List<Check> checks, Hole hole) {
        if (!(hole.at20() instanceof Grid grid)
                || !ShapeShown.by(grid, engine.deck().stroke())) {
            checks.add(NO_TAPER);
            checks.add(NO_OUT_OF_ROUND);
            return;
        }
        checks.addAll(WornShape.check(grid, hole.ofReading(), engine.limits()));
    }

    private void addAsFound(List<Check> checks, AsFound found) {
        checks.add(found.grooves()
                .<Check>map(grooves -> suits(
                        Rule.GROOVES, grooves.label(), AsFound.Grooves.GOOD.label(), grooves == AsFound.Grooves.GOOD))
                .orElse(NO_GROOVES));
        checks.add(found.ridge()
                .<Check>map(ridge ->
                        suits(Rule.RIDGE, ridge.label(), AsFound.Ridge.OFF.label(), ridge != AsFound.Ridge.THERE))
                .orElse(NO_RIDGE));
        checks.add(found.glaze()
                .<Check>map(glaze ->
                        suits(Rule.GLAZE, glaze.label(), AsFound.Glaze.BROKEN.label(), glaze == AsFound.Glaze.BROKEN))
                .filter(told -> engine.build().construction().mayBeBored())
                .orElse(engine.build().construction().mayBeBored() ? NO_GLAZE : NEVER_HONED));
    }

    private static Check suits(Rule rule, String found, String asked, boolean suits) {
        return new Suitability(rule, "", found, asked, suits);
    }

    private Check wanting() {
        if (choice.isPresent()) {
            return request.rings().areBought() ? NO_RING_SOLD : NO_RING_SUPPLIED;
        }
        return noRings ? NO_RING_AT_ALL : NO_RING;
    }

    private static boolean noneIsSupplied(Shelf shelf, Size size) {
        return shelf.parts().ringSets().stream()
                .noneMatch(set -> set.size().equals(size.label()) && Supply.isSupplied(shelf, set.number()));
    }

    private PistonShape pistonOf(int index) {
        return choice.orElseThrow().pistons().get(index).get(0).shape();
    }

    /** New rings in a hole, at its smallest and its largest place that was read: it may lie beyond their travel, and then it asks more of them. */
    private record Fitted(Hole hole, RingSet rings, PistonShape piston) {

        /** Whether they are filed is asked once it is told either way. */
        List<Check> checks(Optional<Boolean> filed) {
            Limits read = hole.diameters().orElseThrow();
            List<Check> checks = RingChecks.gapsInService(read, hole.ofReading(), rings, piston);
            filed.ifPresent(are -> checks.addAll(RingChecks.filedIn(read, hole.ofReading(), rings, piston, are)));
            return checks;
        }

        List<RingGapIn> gaps() {
            return RingGapIn.in(hole.diameters().orElseThrow(), hole.ofReading(), List.of(rings), piston);
        }
    }
}
