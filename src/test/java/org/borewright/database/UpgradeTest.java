package org.borewright.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A database that an older version filled goes on with what it knew. No service is started, but both databases are asked. */
@Tag("io.quarkus.test.junit.QuarkusTest")
class UpgradeTest {

    private static final String URL = TestDatabase.own(TestDatabase.UPGRADES).get("quarkus.datasource.jdbc.url");

    private static final String USER = TestDatabase.isPostgres() ? "postgres" : "";

    /** Each order holds one GASKET that lies there; those that wait wait for one PISTON. */
    @Test
    void ordersOfTheSeventhVersionStandWhereTheyStoodAndYesesThatLapsedAreGone() throws SQLException {
        Flyway.configure().dataSource(URL, USER, "").target("7").load().migrate();
        try (Connection tables = DriverManager.getConnection(URL, USER, "");
                Statement statement = tables.createStatement()) {
            order(statement, 1, "ACCEPTED", true, false, false);
            order(statement, 2, "ACCEPTED", true, true, false);
            order(statement, 3, "ACCEPTED", true, false, true);
            order(statement, 4, "SURVEYED", false, true, true);
            order(statement, 5, "CONFIRMED", false, false, true);
            order(statement, 6, "WITHDRAWN", false, false, false);
            statement.execute("delete from reservations where order_number = 6");

            Flyway.configure().dataSource(URL, USER, "").load().migrate();

            assertThat(told(statement))
                    .containsExactly(
                            "1 ACCEPTED, quote 1, ends, 1 aside, 0 to come",
                            "2 ACCEPTED, quote 1, stays, 1 aside, 1 to come",
                            "3 ACCEPTED, quote 1, stays, 1 aside, 0 to come",
                            "4 SURVEYED, no quote, ends, 1 aside, 0 to come",
                            "5 CONFIRMED, quote 1, stays, 1 aside, 0 to come",
                            "6 WITHDRAWN, no quote, stays, 0 aside, 0 to come");
        }
    }

    /** Else every line of the journal is read for the page of the shelf. */
    @Test
    void theLastArrivalsAreFoundByAnIndex() throws SQLException {
        Flyway.configure()
                .dataSource(URL, USER, "")
                .schemas("found_arrivals")
                .load()
                .migrate();
        try (Connection tables = DriverManager.getConnection(URL, USER, "")) {
            String journal = tables.getMetaData().storesUpperCaseIdentifiers() ? "JOURNAL" : "journal";
            List<String> columns = new ArrayList<>();
            try (ResultSet row = tables.getMetaData().getIndexInfo(null, "found_arrivals", journal, false, false)) {
                while (row.next()) {
                    if (row.getString("INDEX_NAME").equalsIgnoreCase("journal_by_deed")) {
                        columns.add(row.getString("COLUMN_NAME").toLowerCase(Locale.ROOT));
                    }
                }
            }
            assertThat(columns).containsExactly("did", "position");
        }
    }

    private static void order(
            Statement statement, int number, String state, boolean ends, boolean waits, boolean confirmed)
            throws SQLException {
        statement.execute("""
                insert into orders (number, version, kind, state, customer, engine, notes, opened_at, opened_on, accepted_quote, held_until)
                values (%d, 4, 'REBUILD', '%s', 'Tessaly Rowing Club', 'HALVERN-131', '', current_timestamp, current_date, 1, %s)""".formatted(number, state, ends ? "current_timestamp" : "null"));
        reserve(statement, number, "GASKET", 1, 0);
        if (waits) {
            reserve(statement, number, "PISTON", 0, 1);
        }
        if (confirmed) {
            statement.execute("""
                    insert into order_papers (order_number, kind, at, by_whom, says, request, answer)
                    values (%d, 'BENCH', current_timestamp, 'Ada', 'ready', '{}', '{}')""".formatted(number));
        }
    }

    private static void reserve(Statement statement, int order, String number, int aside, int toCome)
            throws SQLException {
        statement.execute(
                "insert into reservations (order_number, number, put_aside, to_come) values (%d, '%s', %d, %d)"
                        .formatted(order, number, aside, toCome));
    }

    private static List<String> told(Statement statement) throws SQLException {
        List<String> told = new ArrayList<>();
        try (ResultSet row = statement.executeQuery("""
                select o.number, o.state, o.accepted_quote, o.held_until, coalesce(sum(r.put_aside), 0), coalesce(sum(r.to_come), 0)
                from orders o left join reservations r on r.order_number = o.number
                group by o.number, o.state, o.accepted_quote, o.held_until order by o.number""")) {
            while (row.next()) {
                told.add("%d %s, %s, %s, %d aside, %d to come"
                        .formatted(
                                row.getLong(1),
                                row.getString(2),
                                row.getObject(3) == null ? "no quote" : "quote " + row.getInt(3),
                                row.getObject(4) == null ? "stays" : "ends",
                                row.getLong(5),
                                row.getLong(6)));
            }
        }
        return told;
    }
}
