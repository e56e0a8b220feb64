package org.borewright.measure.survey;

import java.util.List;
import java.util.function.UnaryOperator;
import org.borewright.measure.Length;

/**
 * One diameter, place and axis unknown: the user's largest. It says nothing of taper or out-of-round.
 *
 * @param diameter the reading
 */
public record SingleDiameter(Length diameter) implements Survey {

    @Override
    public List<Length> readings() {
        return List.of(diameter);
    }

    @Override
    public SingleDiameter map(UnaryOperator<Length> change) {
        return new SingleDiameter(change.apply(diameter));
    }
}
