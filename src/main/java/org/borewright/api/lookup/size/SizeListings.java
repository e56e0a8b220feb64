package org.borewright.api.lookup.size;

import java.util.List;
import java.util.Optional;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.Listing.Use;
import org.borewright.catalog.Size;

/** The numbers that go into an engine at a size. */
final class SizeListings {

    private SizeListings() {}

    /** Those of this size and those of every size, sorted by number. */
    static List<Listing> of(Catalogue catalogue, String engine, Size size) {
        Use ofSize = new Use(engine, Optional.of(size.label()));
        Use ofEverySize = new Use(engine, Optional.empty());
        return catalogue.listings().values().stream()
                .filter(listing ->
                        listing.uses().contains(ofSize) || listing.uses().contains(ofEverySize))
                .toList();
    }
}
