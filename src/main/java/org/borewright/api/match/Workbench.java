package org.borewright.api.match;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.borewright.api.match.answer.Stencils;
import org.borewright.catalog.Offers;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.measure.LengthUnit;

/**
 * What is laid out for one engine, at one revision and with one set of prices and stock, before anybody asks.
 *
 * @param fits what fits each size
 * @param offers the prices and stock
 * @param kits finds and remembers kits
 * @param inMillimetres what answers in millimetres repeat word for word
 * @param inInches what answers in inches repeat word for word
 */
record Workbench(FitTable fits, Offers offers, KitFinder kits, Stencils inMillimetres, Stencils inInches) {

    static Workbench lay(FitTable fits, Offers offers, ObjectMapper json) {
        return new Workbench(
                fits,
                offers,
                new KitFinder(fits.shelf(), offers),
                new Stencils(json, fits, LengthUnit.MILLIMETRE),
                new Stencils(json, fits, LengthUnit.INCH));
    }

    /** Whether it is laid out for just these; another table or other offers with the same content are another revision's. */
    @SuppressWarnings("ReferenceEquality") // comparing whole catalogues by content would cost more than laying out anew
    boolean isFor(FitTable otherFits, Offers otherOffers) {
        return fits == otherFits && offers == otherOffers;
    }

    /** What answers in this unit repeat. */
    Stencils in(LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> inMillimetres;
            case INCH -> inInches;
        };
    }
}
