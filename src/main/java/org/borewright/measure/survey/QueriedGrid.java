package org.borewright.measure.survey;

import java.util.List;
import java.util.function.UnaryOperator;
import org.borewright.measure.Length;

/**
 * A grid with queries that nobody answered. It hands out no reading, not even those that are not in question, so that nothing can be
 * computed from it: a slip in one place says that the note as a whole was not compared with the gauge.
 *
 * @param queries what is asked; at least one
 */
public record QueriedGrid(List<Query> queries) implements Survey {

    /** Why a check cannot be made for it, and the way out. */
    public static final String READ_AGAIN =
            "read the queried places again: nothing is computed from readings that are queried";

    /** @throws IllegalArgumentException without a query */
    public QueriedGrid {
        queries = List.copyOf(queries);
        if (queries.isEmpty()) {
            throw new IllegalArgumentException("nothing is queried");
        }
    }

    @Override
    public List<Length> readings() {
        return List.of();
    }

    @Override
    public QueriedGrid map(UnaryOperator<Length> change) {
        return this;
    }
}
