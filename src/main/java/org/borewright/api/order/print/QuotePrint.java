package org.borewright.api.order.print;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import org.borewright.api.order.answer.OfferDocument;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.QuoteRow;

/**
 * Puts a quote on paper. It is made from what was frozen on the day and from nothing that changes later, so the same quote gives the same
 * bytes for ever.
 */
@ApplicationScoped
public class QuotePrint {

    private final ObjectMapper json;

    QuotePrint(ObjectMapper json) {
        this.json = json;
    }

    /** The PDF of a quote of an order. */
    public byte[] pdf(OrderRow order, QuoteRow quote) {
        QuotePaper paper = new QuotePaper(
                order.number, quote.number, order.customer, order.block, OfferDocument.read(json, quote.document));
        return Sheets.of(paper.render()).pdf(quote.at, quote.id);
    }
}
