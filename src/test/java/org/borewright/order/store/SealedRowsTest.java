package org.borewright.order.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    private static OrderRow accepted() {
        OrderRow order = new OrderRow();
        order.number = 1L;
        order.kind = OrderKind.REBUILD;
        order.state = State.ACCEPTED;
        order.openedAt = Instant.EPOCH;
        order.openedOn = LocalDate.EPOCH;
        return order;
    }

    private static HoleLifeRow signed() {
        HoleLifeRow hole = new HoleLifeRow();
        hole.id = 1L;
        hole.block = "B-17";
        hole.cylinder = "1";
        hole.at = Instant.EPOCH;
        hole.by = "Ada";
        hole.what = HoleLifeRow.What.FINISHED;
        hole.says = "with gauge BG-1";
        return hole;
    }

    /** As they were reckoned before barrels had tags. */
    @Test
    void whatNamesNoBarrelIsSealedAsItAlwaysWas() {
        assertThat(accepted().digest(List.of()))
                .isEqualTo("507984eee4f1bf7f36d4ea68f4935463a735c7d0f627b8aae70a2b72eeda96c1");
        assertThat(signed().digest()).isEqualTo("7e6fd667843edce01df70f135e55a62d61f9489b63507a59e82da1fa2b00c770");
    }

    @Test
    void theBarrelsOfAnOrderAreSealedByCylinder() {
        OrderRow order = accepted();
        order.barrels = new LinkedHashMap<>(Map.of("1", "T-3"));
        order.barrels.put("2", "T-4");
        OrderRow other = accepted();
        other.barrels = new LinkedHashMap<>(Map.of("2", "T-4"));
        other.barrels.put("1", "T-3");

        assertThat(order.digest(List.of()))
                .isEqualTo(other.digest(List.of()))
                .isNotEqualTo(accepted().digest(List.of()));
        other.barrels.put("1", "T-5");
        assertThat(order.digest(List.of())).isNotEqualTo(other.digest(List.of()));
    }

    @Test
    void anOrderIsSealedWithTheQuoteThatWasGivenUp() {
        OrderRow order = accepted();
        order.quoteGivenUp = 1;
        OrderRow other = accepted();
        other.quoteGivenUp = 2;

        assertThat(order.digest(List.of()))
                .isNotEqualTo(other.digest(List.of()))
                .isNotEqualTo(accepted().digest(List.of()));
    }

    @Test
    void aHoleIsSealedWithItsBarrel() {
        HoleLifeRow hole = signed();
        hole.barrel = "T-3";

        assertThat(hole.digest()).isNotEqualTo(signed().digest());
    }

    @Test
    void whatIsHeldForAnOrderIsSealedByNumber() {
        OrderRow order = accepted();

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
