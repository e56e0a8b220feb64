package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonRawValue;
import java.time.Instant;
import org.borewright.order.store.PaperRow;
import org.jspecify.annotations.Nullable;

/**
 * What was asked about an order, and answered.
 *
 * @param id its number
 * @param kind survey, bench or finish
 * @param at when
 * @param by who
 * @param says what came of it, in one sentence
 * @param request as it was sent; absent in a list
 * @param answer as it was given; absent in a list
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PaperAnswer(
        long id,
        String kind,
        Instant at,
        String by,
        String says,
        @Nullable @JsonRawValue String request,
        @Nullable @JsonRawValue String answer) {

    /** All of it. */
    public static PaperAnswer whole(PaperRow row) {
        return new PaperAnswer(row.id, row.kind.label(), row.at, row.by, row.says, row.request, row.answer);
    }

    /** In short. */
    public static PaperAnswer brief(PaperRow row) {
        return new PaperAnswer(row.id, row.kind.label(), row.at, row.by, row.says, null, null);
    }
}
