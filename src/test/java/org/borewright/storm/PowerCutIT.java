package org.borewright.storm;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** H2 may have forgotten which numbers it gave to rows when the power comes back. */
class PowerCutIT {

    @TempDir
    Path home;

    @Test
    void noRowIsGivenTheNumberOfAnother() throws Exception {
        try (Shop shop = Shop.on(Shop.Kind.H2, home)) {
            try (StartedService service = shop.open(1, Shop.SHORT_LIVED).get(0)) {
                Asked.quoted(List.of(new Desk(service.port())), 1, 2);
            }
            try (Connection tables = shop.tables()) {
                for (Numbered numbered : Numbered.in(tables)) {
                    numbered.restart(tables);
                }
            }
            try (StartedService service = shop.open(1, Shop.SHORT_LIVED).get(0)) {
                Desk desk = new Desk(service.port());
                assertThat(Asked.quoted(List.of(desk), 1, 1)).containsExactly(3L);
                desk.send(Asked.yes(3)).need(200);
            }
            try (Connection tables = shop.tables()) {
                assertThat(Numbered.in(tables))
                        .hasSizeGreaterThan(10)
                        .allSatisfy(numbered -> assertThat(numbered.next()).isGreaterThan(numbered.last(tables)));
            }
        }
    }

    /**
     * A column whose numbers the database gives.
     *
     * @param table it is in
     * @param column its name
     * @param next the number it will give
     */
    private record Numbered(String table, String column, long next) {

        static List<Numbered> in(Connection tables) throws SQLException {
            List<Numbered> all = new ArrayList<>();
            try (Statement statement = tables.createStatement();
                    ResultSet columns = statement.executeQuery("""
                            select table_name, column_name, identity_base from information_schema.columns
                            where is_identity = 'YES' and table_schema = 'PUBLIC'""")) {
                while (columns.next()) {
                    all.add(new Numbered(columns.getString(1), columns.getString(2), columns.getLong(3)));
                }
            }
            return all;
        }

        void restart(Connection tables) throws SQLException {
            try (Statement statement = tables.createStatement()) {
                statement.execute("alter table " + table + " alter column " + column + " restart with 1");
            }
        }

        /** The largest number that a row has; 0 without rows. */
        long last(Connection tables) throws SQLException {
            try (Statement statement = tables.createStatement();
                    ResultSet largest = statement.executeQuery("select max(" + column + ") from " + table)) {
                largest.next();
                return largest.getLong(1);
            }
        }
    }
}
