package org.borewright.api.order.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.api.bench.answer.BenchHoldAnswer;
import org.borewright.api.match.answer.HoldAnswer;
import org.borewright.api.shown.ShownCheck;
import org.borewright.fit.Check;
import org.borewright.kit.Hold;
import org.borewright.kit.bench.BenchHold;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.Readiness;
import org.borewright.kit.rings.RingsInHole;
import org.borewright.kit.rings.RingsOnly;
import org.borewright.measure.LengthUnit;
import org.borewright.order.OrderHold;

/** Says why the bench does not let an order go on, each hold with a way out that needs no paper to be looked up. */
public final class Holds {

    private static final String SURVEY_ANEW = "Then survey it anew as did not clean up, and quote anew.";

    private static final String MEASURE_ANEW =
            "Send the cylinders as measured now with the confirmation, or survey anew as did not clean up.";

    private Holds() {}

    /** What stands in the way on the bench. */
    public static List<OrderHold> of(List<BenchHold> holds, LengthUnit unit) {
        return holds.stream()
                .map(hold -> new OrderHold(
                        hold.reason().label(),
                        hold.says(),
                        BenchHoldAnswer.next(hold, unit),
                        hold.cylinders(),
                        hold.pistons()))
                .toList();
    }

    /** What stands against a plan, and the holes that have no measured piston yet. */
    public static List<OrderHold> of(BenchPlan plan, LengthUnit unit) {
        List<OrderHold> holds = new ArrayList<>(of(plan.holds(), unit));
        List<String> without = plan.holes().stream()
                .filter(hole -> hole.piston().isEmpty())
                .map(hole -> hole.hole().name())
                .toList();
        // A piston that was refused is told of as such: its hole would only say it twice.
        if (!without.isEmpty() && plan.readiness() != Readiness.HOLD) {
            holds.add(new OrderHold(
                    Readiness.PROVISIONAL.label(),
                    "No measured piston yet for cylinder" + (without.size() == 1 ? " " : "s ")
                            + String.join(", ", without) + ".",
                    "Measure a piston for every hole, and confirm all of them together.",
                    without,
                    List.of()));
        }
        return holds;
    }

    /** The owner's own pistons that were not weighed: what a list tells of the masses of new ones tells nothing of theirs. */
    public static List<OrderHold> ofUnweighed(List<PistonReading> pistons) {
        List<String> tags = pistons.stream()
                .filter(piston -> piston.milligrams().isEmpty())
                .map(PistonReading::tag)
                .toList();
        return tags.isEmpty()
                ? List.of()
                : List.of(new OrderHold(
                        "not weighed",
                        "The owner's own pistons are weighed before anything is bored: piston"
                                + (tags.size() == 1 ? " " : "s ") + String.join(", ", tags) + ".",
                        "Weigh every piston of the set, and send its mass.",
                        List.of(),
                        tags));
    }

    /** What the survey of an order left open, and how an order gets past it. */
    public static List<OrderHold> ofSurvey(List<Hold> open, LengthUnit unit) {
        return open.stream()
                .map(hold -> HoldAnswer.of(hold, unit))
                .map(hold -> new OrderHold(
                        hold.reason(),
                        "The survey of the order says: " + hold.says(),
                        hold.next() + " " + (hold.cylinders().isEmpty() ? SURVEY_ANEW : MEASURE_ANEW),
                        hold.cylinders(),
                        List.of()))
                .toList();
    }

    /** What of new rings alone is not met, or not known. */
    public static List<OrderHold> ofRings(Optional<RingsOnly> rings, LengthUnit unit) {
        if (rings.isEmpty()) {
            return List.of(new OrderHold(
                    "rings only",
                    "The holes cannot run on as they are.",
                    "Survey and quote anew.",
                    List.of(),
                    List.of()));
        }
        List<OrderHold> holds = new ArrayList<>();
        for (RingsInHole hole : rings.get().holes()) {
            Check.holding(hole.checks())
                    .forEach(check ->
                            holds.add(ofRings(check, ", cylinder " + hole.cylinder(), List.of(hole.cylinder()), unit)));
        }
        Check.holding(rings.get().deck()).forEach(check -> holds.add(ofRings(check, "", List.of(), unit)));
        return holds;
    }

    private static OrderHold ofRings(Check check, String where, List<String> cylinders, LengthUnit unit) {
        return new OrderHold(
                check.outcome().label(),
                "For new rings alone: " + check.rule().title()
                        + (check.place().isEmpty() ? "" : ", " + check.place()) + where + ": "
                        + check.outcome().label() + ".",
                ShownCheck.waysOut(List.of(check), unit).orElse(check.rule().wayOut()),
                cylinders,
                List.of());
    }
}
