package org.borewright.measure.survey;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.borewright.measure.Length;

/**
 * One diameter, place and axis unknown: the user's largest. It says nothing of taper or out-of-round.
 *
 * @param diameter the reading
 */
public record SingleDiameter(Length diameter) implements Survey {

    @Override
    public Stream<Length> readings() {
        return Stream.of(diameter);
    }

    @Override
    public SingleDiameter map(UnaryOperator<Length> change) {
        return new SingleDiameter(change.apply(diameter));
    }
}
