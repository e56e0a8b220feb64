package org.borewright.api;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.borewright.catalog.Shelf;
import org.borewright.kit.choice.FitTable;

/** Keeps what fits each engine, worked out when first asked for, until the catalogue is at another revision. */
@ApplicationScoped
public class FitTables {

    private final Map<String, FitTable> byEngine = new ConcurrentHashMap<>();

    /** What fits the engine of a shelf. */
    public FitTable of(Shelf shelf) {
        FitTable kept = byEngine.get(shelf.engine().code());
        if (kept != null && kept.shelf().revision().equals(shelf.revision())) {
            return kept;
        }
        FitTable worked = FitTable.of(shelf);
        byEngine.put(shelf.engine().code(), worked);
        return worked;
    }
}
