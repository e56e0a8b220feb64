package org.borewright.kit.bench.finish;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.borewright.catalog.RingSet;
import org.borewright.fit.CommonPractice;
import org.borewright.kit.bench.PistonReading;
import org.borewright.kit.bench.Weighed;
import org.borewright.kit.choice.Choice;
import org.borewright.kit.request.Deck;
import org.borewright.measure.Measuring;

/**
 * What is asked after honing.
 *
 * @param choice one maker's pistons at the size the engine went to
 * @param rings the ring set that goes on the pistons; empty when it is not known
 * @param pistons measured, in whatever order; their tags differ
 * @param weighed how those that were weighed were
 * @param holes in the engine's order, each with its piston
 * @param deck as found, what is skimmed off it, and what was
 * @param ofHoles with what and how warm the holes were measured
 * @param ofPistons with what and how warm the pistons were measured
 * @param atRoomTemperature whether all holes were measured after the block had come to room temperature
 * @param ringsFiled whether each ring that had to be was filed, at the narrowest place of its own hole
 * @param on the day of the question
 */
public record FinishRequest(
        Choice choice,
        Optional<RingSet> rings,
        List<PistonReading> pistons,
        Weighed weighed,
        List<FittedHole> holes,
        Deck deck,
        Measuring ofHoles,
        Measuring ofPistons,
        boolean atRoomTemperature,
        boolean ringsFiled,
        LocalDate on) {

    /** Copies the lists. */
    public FinishRequest {
        pistons = List.copyOf(pistons);
        holes = List.copyOf(holes);
    }

    /** The same question of a deck that is otherwise. */
    public FinishRequest with(Deck other) {
        return new FinishRequest(
                choice, rings, pistons, weighed, holes, other, ofHoles, ofPistons, atRoomTemperature, ringsFiled, on);
    }

    /** Whether it was, and no temperature that was stated says otherwise. */
    boolean isAtRoomTemperature() {
        return atRoomTemperature
                && !ofHoles.climate().temperature().isFurtherFromReferenceThan(CommonPractice.roomWithinKelvins());
    }
}
