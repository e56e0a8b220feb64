package org.borewright.api.lookup.size;

import java.util.List;
import java.util.stream.Stream;
import org.borewright.api.lookup.part.OfferAnswer;
import org.borewright.api.lookup.part.PartAnswer;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.Revision;
import org.borewright.catalog.Size;

/**
 * Prices and stock of what goes into an engine at a size, at this moment.
 *
 * @param engine its code
 * @param size the label of the size
 * @param offers of every number that is sold by itself, sorted
 * @param revision of the catalogue
 */
public record OffersAnswer(String engine, String size, List<NumberAnswer> offers, Revision revision) {

    /**
     * One number.
     *
     * @param number which
     * @param what it is: a kind of part, or how a box is packed
     * @param offer price and stock
     */
    public record NumberAnswer(String number, String what, OfferAnswer offer) {

        static Stream<NumberAnswer> of(Listing listing, Catalogue catalogue) {
            return catalogue.offers().of(listing.number()).stream()
                    .map(offer ->
                            new NumberAnswer(listing.number().text(), PartAnswer.what(listing), OfferAnswer.of(offer)));
        }
    }

    static OffersAnswer of(Catalogue catalogue, String engine, Size size) {
        return new OffersAnswer(
                engine,
                size.label(),
                SizeListings.of(catalogue, engine, size).stream()
                        .flatMap(listing -> NumberAnswer.of(listing, catalogue))
                        .toList(),
                catalogue.revision());
    }
}
