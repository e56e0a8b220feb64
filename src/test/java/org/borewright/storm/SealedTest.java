package org.borewright.storm;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What audits a storm finds a whole journal whole, and what was changed changed. */
@QuarkusTest
@TestProfile(OwnShop.class)
class SealedTest {

    private static int tags;

    @Inject
    DataSource tables;

    private static Orders finished() {
        for (String part : new String[] {"NH-H131-CB050", "HV131-SE", "HV131-GK"}) {
            Orders.arrive(part, 2).statusCode(200);
        }
        Orders order = Orders.quotedWithBarrel("SD-" + ++tags);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("finish", Orders.HONED).statusCode(200);
        return order;
    }

    @Test
    void aWholeJournalHolds() throws SQLException {
        finished();

        try (Connection connection = tables.getConnection()) {
            assertThat(new Sealed(connection).holds()).isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "update order_papers set answer = '{}' where order_number = ?",
        "update hole_lives set barrel = 'SD-0.1' where order_number = ?",
        "update order_barrels set tag = 'SD-0.1' where order_number = ?",
        "update hole_lives set largest = largest - 1000 where order_number = ?",
        "update quotes set document = '{}' where order_number = ?",
        "update orders set notes = 'paid' where number = ?",
        "update reservations set put_aside = put_aside + 1 where order_number = ?",
        "update journal set after_it = 'nothing' where order_number = ?",
        "update journal set order_number = null where order_number = ?",
        "delete from reservations where order_number = ?",
    })
    void whatWasChangedDoesNot(String change) throws SQLException {
        Orders order = finished();
        String changing = change.replace("?", Long.toString(order.number()));

        try (Connection connection = tables.getConnection()) {
            connection.setAutoCommit(false);
            try (Statement statement = connection.createStatement()) {
                assertThat(statement.executeUpdate(changing)).isPositive();
            }
            assertThat(new Sealed(connection).holds()).isFalse();
            connection.rollback();
            connection.setAutoCommit(true);
        }
    }
}
