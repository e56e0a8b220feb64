package org.borewright.api.lookup.part;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.borewright.api.shown.Days;
import org.borewright.api.shown.ShownMoney;
import org.borewright.catalog.Offer;
import org.jspecify.annotations.Nullable;

/**
 * Price and stock of a number.
 *
 * @param price of one
 * @param onHand how many lie on the shelf
 * @param leadDays how many days more of them take; absent when no more can be had
 * @param availability the same in words
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record OfferAnswer(
        ShownMoney price, int onHand, @Nullable Integer leadDays, String availability) {

    public static OfferAnswer of(Offer offer) {
        Integer leadDays = offer.leadDays().isPresent() ? offer.leadDays().getAsInt() : null;
        return new OfferAnswer(ShownMoney.of(offer.price()), offer.onHand(), leadDays, availability(offer));
    }

    private static String availability(Offer offer) {
        if (offer.onHand() > 0) {
            return "in stock";
        }
        return offer.leadDays().isPresent()
                ? "to be ordered, " + Days.inWords(offer.leadDays().getAsInt())
                : "out of stock, no more to be had";
    }
}
