package org.borewright.measure.survey;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.borewright.measure.Length;

/** Nothing measured: at most a stamp on the crown is known. */
public record NotMeasured() implements Survey {

    @Override
    public Stream<Length> readings() {
        return Stream.empty();
    }

    @Override
    public NotMeasured map(UnaryOperator<Length> change) {
        return this;
    }
}
