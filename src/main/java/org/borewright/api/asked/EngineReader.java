package org.borewright.api.asked;

import java.util.Optional;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Shelf;

/** Reads which engine is asked about. */
public final class EngineReader {

    private EngineReader() {}

    /** Its shelf; empty when no engine has this code. */
    public static Optional<Shelf> read(Place place, Catalogue catalogue) {
        place.need("It is not said which engine is asked about.");
        Optional<String> code = place.text();
        Optional<Shelf> shelf = code.flatMap(catalogue::shelf);
        if (code.isPresent() && shelf.isEmpty()) {
            place.add(UnknownName.engine(place.pointer(), code.get(), catalogue));
        }
        return shelf;
    }
}
