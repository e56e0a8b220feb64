package org.borewright.api.shelf;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.api.guard.Parameters;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.store.Shelves;
import org.borewright.catalog.store.Stock;
import org.borewright.order.store.ReservationRow;

/** The shelf as a whole: what lies there, for which engines, what of it is put aside, and what is short. */
@Path("/api/stock")
@Produces(MediaType.APPLICATION_JSON)
public class ShelfLookup {

    private final Shelves shelves;
    private final Stock stock;

    ShelfLookup(Shelves shelves, Stock stock) {
        this.shelves = shelves;
        this.stock = stock;
    }

    /** The places that answer a query, by number, page by page. */
    @GET
    @Transactional
    public StockAnswer places(@Context UriInfo called) {
        return places(StockQuery.read(new Parameters(called)));
    }

    /** The same, of a query that was read. */
    @Transactional
    public StockAnswer places(StockQuery query) {
        Catalogue catalogue = shelves.catalogue();
        Map<String, Long> toCome = ReservationRow.toCome();
        List<StockAnswer.PlaceAnswer> found = stock.places().stream()
                .filter(place -> query.after()
                        .filter(after -> place.number().compareTo(after) <= 0)
                        .isEmpty())
                .flatMap(place -> listing(place, catalogue)
                        .filter(query::asksFor)
                        .map(listing ->
                                StockAnswer.PlaceAnswer.of(listing, place, toCome.getOrDefault(place.number(), 0L))))
                .filter(place -> !query.isShort() || place.isShort())
                .limit(query.limit() + 1L)
                .toList();
        return StockAnswer.of(found, query.limit(), catalogue.revision(), catalogue.loadedAt());
    }

    private static Stream<Listing> listing(Stock.Place place, Catalogue catalogue) {
        return Optional.of(new PartNumber(place.number())).flatMap(catalogue::listing).stream();
    }
}
