package org.borewright.api.bench.request;

import org.borewright.api.asked.Opening;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.LengthUnit;

/**
 * A question that holds together.
 *
 * @param fits what fits the engine asked about
 * @param request what is asked
 * @param unit the question was put in, and is to be answered in
 * @param <R> which of the two it is
 */
public record Question<R>(FitTable fits, R request, LengthUnit unit) {

    /** The same question, with what more is known. */
    public Question<R> of(R knowing) {
        return new Question<>(fits, knowing, unit);
    }

    static <R> Question<R> of(Opening opening, R request) {
        return new Question<>(
                opening.fits().orElseThrow(), request, opening.unit().orElseThrow());
    }
}
