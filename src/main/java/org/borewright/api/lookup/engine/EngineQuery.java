package org.borewright.api.lookup.engine;

import java.math.BigDecimal;
import java.util.Optional;
import org.borewright.api.guard.Parameters;
import org.borewright.measure.LengthUnit;

/**
 * What engines are looked for.
 *
 * @param words each must begin a word of code, maker, model, layout or construction; empty for any
 * @param maker the maker's name; empty for any
 * @param displacementFrom the smallest displacement in cm³, inclusive
 * @param displacementTo the largest displacement in cm³, inclusive
 * @param paging the part of the findings that is shown
 * @param unit that lengths are shown in
 */
record EngineQuery(
        Optional<String> words,
        Optional<String> maker,
        Optional<BigDecimal> displacementFrom,
        Optional<BigDecimal> displacementTo,
        Paging paging,
        LengthUnit unit) {

    private static final BigDecimal LARGEST = BigDecimal.valueOf(100_000);

    static EngineQuery read(Parameters parameters) {
        EngineQuery query = new EngineQuery(
                parameters.text("words"),
                parameters.text("maker"),
                parameters.number("displacementFrom", BigDecimal.ZERO, LARGEST, 1),
                parameters.number("displacementTo", BigDecimal.ZERO, LARGEST, 1),
                Paging.read(parameters),
                parameters.unit());
        if (query.displacementFrom.isPresent()
                && query.displacementTo
                        .filter(to -> to.compareTo(query.displacementFrom.get()) < 0)
                        .isPresent()) {
            parameters.fault(
                    "displacementTo", "It is less than displacementFrom.", "at least " + query.displacementFrom.get());
        }
        parameters.end();
        return query;
    }
}
