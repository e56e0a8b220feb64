package org.borewright.api.shelf;

import java.util.List;
import java.util.Optional;
import org.borewright.api.guard.Parameters;
import org.borewright.catalog.Listing;

/**
 * Which places of the shelf are asked for, by number, from the one after a number on.
 *
 * @param engine only what goes into it; empty for all engines
 * @param isShort only what is short
 * @param after the number that they follow; empty from the beginning on
 * @param limit how many at the most
 */
public record StockQuery(Optional<String> engine, boolean isShort, Optional<String> after, int limit) {

    /** How many are answered at once at the most. */
    public static final int MOST = 1_000;

    private static final int USUAL = 200;
    private static final String YES = "true";

    /** Reads it. @throws ProblemException if a parameter cannot be used */
    static StockQuery read(Parameters parameters) {
        StockQuery query = new StockQuery(
                parameters.text("engine"),
                isShort(parameters),
                parameters.text("after"),
                parameters.whole("limit", 1, MOST, USUAL));
        parameters.end();
        return query;
    }

    private static boolean isShort(Parameters parameters) {
        Optional<String> text = parameters.text("short");
        if (text.isPresent() && !List.of(YES, "false").contains(text.get())) {
            parameters.fault("short", "This is neither yes nor no.", "true or false");
        }
        return text.filter(YES::equals).isPresent();
    }

    /** Whether a number goes into the engine. */
    boolean asksFor(Listing listing) {
        return engine.isEmpty()
                || listing.uses().stream().anyMatch(use -> use.engine().equals(engine.get()));
    }
}
