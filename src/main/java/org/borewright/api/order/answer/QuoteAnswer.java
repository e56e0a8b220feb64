package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonRawValue;
import java.time.Instant;
import java.time.LocalDate;
import org.borewright.order.store.QuoteRow;
import org.jspecify.annotations.Nullable;

/**
 * A quote on the wire.
 *
 * @param order the order it belongs to
 * @param quote its number within the order, from 1
 * @param at when it was given
 * @param by who gave it
 * @param survey the paper of the survey it stands on
 * @param validUntil the last day it holds
 * @param says what it offers, in a few words
 * @param offer all of it, as it was given: {@link OfferDocument}; absent in a list
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record QuoteAnswer(
        long order,
        int quote,
        Instant at,
        String by,
        long survey,
        LocalDate validUntil,
        String says,
        @Nullable @JsonRawValue String offer) {

    /** All of it. */
    public static QuoteAnswer whole(QuoteRow row) {
        return of(row, row.document);
    }

    /** In short. */
    public static QuoteAnswer brief(QuoteRow row) {
        return of(row, null);
    }

    private static QuoteAnswer of(QuoteRow row, @Nullable String offer) {
        return new QuoteAnswer(
                row.orderNumber, row.number, row.at, row.by, row.survey, row.validUntil, row.says, offer);
    }
}
