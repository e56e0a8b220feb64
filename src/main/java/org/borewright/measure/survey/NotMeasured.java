package org.borewright.measure.survey;

import java.util.List;
import java.util.function.UnaryOperator;
import org.borewright.measure.Length;

/** Nothing measured: at most a stamp on the crown is known. */
public record NotMeasured() implements Survey {

    @Override
    public List<Length> readings() {
        return List.of();
    }

    @Override
    public NotMeasured map(UnaryOperator<Length> change) {
        return this;
    }
}
