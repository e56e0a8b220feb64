package org.borewright.kit.bench;

import java.time.LocalDate;
import java.util.List;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Measuring;
import org.borewright.measure.survey.CylinderSurvey;

/**
 * What is asked before honing.
 *
 * @param choice one maker's pistons at the size the engine goes to
 * @param condition worn while bar and hone have not been done, finished after
 * @param pistons in hand, in whatever order; their tags differ
 * @param weighed how those that were weighed were
 * @param cylinders one survey per hole, in the engine's order
 * @param deck as found, what is skimmed off it, and what was
 * @param ofHoles with what and how warm the holes were, and will be, measured
 * @param ofPistons with what and how warm the pistons were measured
 * @param on the day of the question
 */
public record BenchRequest(
        Choice choice,
        Condition condition,
        List<PistonReading> pistons,
        Weighed weighed,
        List<CylinderSurvey> cylinders,
        Deck deck,
        Measuring ofHoles,
        Measuring ofPistons,
        LocalDate on) {

    /** Copies the lists. */
    public BenchRequest {
        pistons = List.copyOf(pistons);
        cylinders = List.copyOf(cylinders);
    }

    /** The same question of a deck that is otherwise. */
    public BenchRequest with(Deck other) {
        return new BenchRequest(choice, condition, pistons, weighed, cylinders, other, ofHoles, ofPistons, on);
    }
}
