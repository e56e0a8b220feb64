package org.borewright.api.order.print;

import io.quarkus.qute.TemplateInstance;
import org.borewright.api.order.answer.OfferDocument;
import org.jspecify.annotations.Nullable;

/**
 * What stands on the paper of a quote: the template of the same name lays it out.
 *
 * @param order its number
 * @param quote its number within the order
 * @param customer how the shop knows them
 * @param block the shop's tag; absent for parts alone
 * @param offer all of it, as it was given
 */
record QuotePaper(
        long order, int quote, String customer, @Nullable String block, OfferDocument offer)
        implements TemplateInstance {}
