package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.borewright.catalog.store.Stock;
import org.jspecify.annotations.Nullable;

/**
 * What lies on the shelf of a number at this moment.
 *
 * @param number of a box or loose part
 * @param onHand how many lie there
 * @param putAside how many of them are put aside for orders
 * @param left how many can still be had
 * @param toCome how many orders wait for
 * @param leadDays how many days more of them take; absent when no more can be had
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ShelfAnswer(
        String number,
        int onHand,
        int putAside,
        int left,
        long toCome,
        @Nullable Integer leadDays) {

    /** A place on the shelf, and how many orders wait for what lies there. */
    public static ShelfAnswer of(Stock.Place place, long toCome) {
        return new ShelfAnswer(
                place.number(),
                place.onHand(),
                place.putAside(),
                place.onHand() - place.putAside(),
                toCome,
                place.leadDays().isPresent() ? place.leadDays().getAsInt() : null);
    }
}
