package org.borewright.kit.rings;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Size;
import org.borewright.fit.Check;
import org.borewright.fit.Outcome;
import org.borewright.fit.Rule;
import org.borewright.fit.ServiceClearance;
import org.borewright.fit.Suitability;
import org.borewright.fit.Unchecked;
import org.borewright.fit.WornPistonReading;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.hole.Hole;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentPiston;
import org.borewright.measure.Length;
import org.borewright.measure.Limits;
import org.borewright.measure.Uncertainty;
import org.borewright.measure.survey.Axis;
import org.borewright.measure.survey.Grid;

/** Asks of the piston that is in a hole whether it is one of the engine's size, and how much clearance it still has. */
final class PistonInHole {

    private final Engine engine;
    private final MatchRequest request;
    private final Optional<PistonDesign> design;
    private final Optional<Choice> choice;
    private final Length sweptFrom;

    /** For pistons of one design, at the present size. */
    PistonInHole(Engine engine, MatchRequest request, Optional<PistonDesign> design, Optional<Choice> choice) {
        this.engine = engine;
        this.request = request;
        this.design = design;
        this.choice = choice;
        this.sweptFrom = ServiceClearance.sweptFrom(
                engine.deck(), request.deck().skimmedBefore().orElse(Length.ZERO));
    }

    /** Whether the piston is of the design that the others are, of the present size, and made for this hole; empty when not known. */
    Optional<Check> kind(int hole) {
        PresentPiston piston = request.asFound().get(hole).piston();
        Cylinder cylinder = engine.cylinders().get(hole);
        return piston.design().map(known -> {
            Optional<Piston> part = piston.part();
            Optional<Size> present = request.present().reliable();
            boolean sized = part.isEmpty()
                    || present.filter(size -> !size.label().equals(part.get().size()))
                            .isEmpty();
            boolean handed =
                    part.filter(made -> !made.hand().goesInto(cylinder.hand())).isEmpty();
            return new Suitability(
                    Rule.PRESENT_PISTON,
                    "",
                    part.map(PistonInHole::told).orElse(known.code()),
                    design.orElseThrow().code()
                            + present.map(size -> ", " + size.label()).orElse(""),
                    sized && handed && known.equals(design.orElseThrow()));
        });
    }

    private static String told(Piston part) {
        return part.design() + ", " + part.size() + " (" + part.number().text() + ", made for "
                + part.hand().label() + " hole)";
    }

    /** The piston as measured; empty when nobody measured it, or nobody knows which it is. */
    Optional<PresentPistonMeasured> measured(int index) {
        PresentPiston piston = request.asFound().get(index).piston();
        return piston.asRead()
                .flatMap(read -> piston.design()
                        .map(made -> new PresentPistonMeasured(read, piston.measuring(), made.expansion())));
    }

    /** The clearance of the measured piston; empty when nobody measured it, or nobody knows which it is. */
    Optional<Check> clearance(int index, Hole hole) {
        PresentPiston piston = request.asFound().get(index).piston();
        return measured(index)
                .flatMap(measured -> tolerance(piston, index)
                        .map(tolerance -> clearance(
                                hole, measured, tolerance, piston.design().orElseThrow())));
    }

    /** Of its number; where that is not known, of all pistons of its design that may be in the hole. */
    private Optional<Limits> tolerance(PresentPiston piston, int index) {
        return piston.part()
                .map(part -> part.shape().diameter())
                .or(() -> choice.map(made -> made.pistons().get(index)).map(PistonInHole::around));
    }

    private static Limits around(List<Piston> pistons) {
        return Limits.around(pistons.stream()
                .map(piston -> piston.shape().diameter())
                .flatMap(limits -> Stream.of(limits.least(), limits.greatest()))
                .toList());
    }

    private Check clearance(Hole hole, PresentPistonMeasured piston, Limits tolerance, PistonDesign design) {
        Length diameter = piston.diameter();
        Uncertainty uncertainty = piston.budget();
        Optional<String> doubted = WornPistonReading.doubted(diameter, uncertainty.expanded(), tolerance);
        if (doubted.isPresent()) {
            return unknown(doubted.get());
        }
        if (design.wearLimit().isEmpty()) {
            return unknown("the piston maker states no wear limit: ask him for it");
        }
        Length wearLimit = design.wearLimit().get();
        Function<Length, Check> check =
                largest -> ServiceClearance.check(largest, hole.ofReading(), diameter, uncertainty, wearLimit);
        Optional<Check> swept = hole.at20() instanceof Grid grid ? judged(grid, check) : Optional.empty();
        return swept.orElseGet(
                () -> unknown(
                        "measure the hole across the thrust faces where the skirt sweeps it, below the pin at top dead centre"));
    }

    /**
     * Where the sweep begins between two rows the hole is there no larger than at the larger of them. If that row settles it otherwise than
     * those in the sweep, or nothing was read so far up, only a reading there does. Empty where nothing was read in the sweep.
     */
    private Optional<Check> judged(Grid grid, Function<Length, Check> check) {
        return grid.largestAlong(Axis.THRUST, sweptFrom).map(below -> {
            Check least = check.apply(below);
            if (least.outcome() == Outcome.OUT) {
                return least;
            }
            return grid.lastRead(Axis.THRUST, sweptFrom)
                    .flatMap(above -> grid.largestAlong(Axis.THRUST, above))
                    .map(check)
                    .filter(most -> most.outcome() == least.outcome())
                    .orElseGet(
                            () -> unknown(
                                    "measure the hole across the thrust faces where the sweep of the skirt begins, "
                                            + sweptFrom.toMillimetres()
                                            + " mm below the deck or just above: by what was read above and below it the clearance is not proven"));
        });
    }

    private static Check unknown(String wayOut) {
        return new Unchecked(Rule.SERVICE_CLEARANCE, "", Outcome.UNKNOWN, wayOut);
    }
}
