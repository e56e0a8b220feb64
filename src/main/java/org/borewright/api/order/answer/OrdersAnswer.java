package org.borewright.api.order.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Set;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.ReservationRow;
import org.jspecify.annotations.Nullable;

/**
 * Some orders, by number.
 *
 * @param orders those of this page
 * @param after what to ask the next page with; absent on the last
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record OrdersAnswer(
        List<OrderAnswer> orders, @Nullable Long after) {

    /** A page of these orders; one more than a page holds tells that another follows. */
    public static OrdersAnswer of(List<OrderRow> rows, int limit) {
        List<OrderRow> page = rows.subList(0, Math.min(limit, rows.size()));
        Set<Long> waiting =
                ReservationRow.waiting(page.stream().map(row -> row.number).toList());
        return new OrdersAnswer(
                page.stream()
                        .map(row -> OrderAnswer.brief(row, waiting.contains(row.number)))
                        .toList(),
                rows.size() > limit ? page.get(limit - 1).number : null);
    }
}
