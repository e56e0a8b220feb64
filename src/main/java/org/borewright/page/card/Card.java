package org.borewright.page.card;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.borewright.api.order.answer.OrderAnswer;
import org.jspecify.annotations.Nullable;

/**
 * What stands on the bench card of an order.
 *
 * @param order as it stands now
 * @param address of its page, as the code says it
 * @param code that says it
 * @param says where the work stands, in one plain sentence
 * @param planned what is to become of the holes, in a few words; absent once it is confirmed, and while nothing is quoted
 * @param confirmed what the bench confirmed; absent before
 */
record Card(
        OrderAnswer order,
        String address,
        Code code,
        String says,
        @Nullable String planned,
        @Nullable Confirmed confirmed) {

    /**
     * What the bench confirmed.
     *
     * @param at when
     * @param by who
     * @param told the answer that was kept, figure for figure
     * @param rings the ring sets that were sold: the gaps of others are nobody's concern
     */
    record Confirmed(Instant at, String by, Map<String, Object> told, List<String> rings) {}

    /** When its pistons were confirmed, else when the order was opened: what it is printed as of. */
    Instant asOf() {
        return confirmed == null ? order.openedAt() : confirmed.at();
    }
}
