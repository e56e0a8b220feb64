package org.borewright.api.shelf;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.borewright.api.lookup.part.PartAnswer;
import org.borewright.catalog.Listing;
import org.borewright.catalog.Revision;
import org.borewright.catalog.store.Stock;
import org.jspecify.annotations.Nullable;

/**
 * Places of the shelf at this moment, by number.
 *
 * @param places those of this page
 * @param after what to ask the next page with; absent on the last
 * @param revision of the catalogue
 * @param loadedAt when the catalogue files were loaded
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record StockAnswer(
        List<StockAnswer.PlaceAnswer> places, @Nullable String after, Revision revision, Instant loadedAt) {

    /**
     * One place.
     *
     * @param number of a box or loose part
     * @param what it is: a kind of part, or how a box is packed
     * @param uses the engines it goes into, and at which sizes
     * @param onHand how many lie there
     * @param putAside how many of them are put aside for orders
     * @param left how many can still be had
     * @param toCome how many orders wait for
     * @param leadDays how many days more of them take; absent when no more can be had
     * @param isShort whether none is left, or orders wait for it
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record PlaceAnswer(
            String number,
            String what,
            List<PartAnswer.UseAnswer> uses,
            int onHand,
            int putAside,
            int left,
            long toCome,
            @Nullable Integer leadDays,
            @JsonProperty("short") boolean isShort) {

        static PlaceAnswer of(Listing listing, Stock.Place place, long toCome) {
            int left = place.onHand() - place.putAside();
            return new PlaceAnswer(
                    place.number(),
                    PartAnswer.what(listing),
                    PartAnswer.UseAnswer.of(listing),
                    place.onHand(),
                    place.putAside(),
                    left,
                    toCome,
                    place.leadDays().isPresent() ? place.leadDays().getAsInt() : null,
                    left == 0 || toCome > 0);
        }

        /** Whether it goes into an engine at a size, or at every size where none is named. */
        public boolean goesInto(String engine, Optional<String> size) {
            return uses.contains(new PartAnswer.UseAnswer(engine, size.orElse(null)));
        }
    }

    /** A page of these places; one more than a page holds tells that another follows. */
    static StockAnswer of(List<PlaceAnswer> found, int limit, Revision revision, Instant loadedAt) {
        List<PlaceAnswer> page = found.subList(0, Math.min(limit, found.size()));
        return new StockAnswer(page, found.size() > limit ? page.get(limit - 1).number() : null, revision, loadedAt);
    }
}
