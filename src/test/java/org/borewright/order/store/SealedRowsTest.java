package org.borewright.order.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.borewright.order.OrderKind;
import org.borewright.order.State;
import org.junit.jupiter.api.Test;

/** Rows that a database hands out in an order of its own, by its language say, are sealed in one order everywhere. */
class SealedRowsTest {

    private static ReservationRow held(String number) {
        ReservationRow row = new ReservationRow();
        row.number = number;
        row.putAside = 1;
        return row;
    }

    private static QuotePartRow part(String number) {
        QuotePartRow row = new QuotePartRow();
        row.number = number;
        row.quantity = 1;
        return row;
    }

    @Test
    void whatIsHeldForAnOrderIsSealedByNumber() {
        OrderRow order = new OrderRow();
        order.number = 1L;
        order.kind = OrderKind.REBUILD;
        order.state = State.ACCEPTED;
        order.openedAt = Instant.EPOCH;
        order.openedOn = LocalDate.EPOCH;

        assertThat(order.digest(List.of(held("B-2"), held("b-1"), held("B1"))))
                .isEqualTo(order.digest(List.of(held("b-1"), held("B1"), held("B-2"))))
                .isNotEqualTo(order.digest(List.of(held("b-1"), held("B1"))));
    }

    @Test
    void thePartsOfAQuoteAreSealedByNumber() {
        QuoteRow quote = new QuoteRow();
        quote.id = 1L;
        quote.at = Instant.EPOCH;

        assertThat(quote.digest(List.of(part("B-2"), part("b-1"), part("B1"))))
                .isEqualTo(quote.digest(List.of(part("b-1"), part("B1"), part("B-2"))))
                .isNotEqualTo(quote.digest(List.of(part("b-1"), part("B1"))));
    }
}
