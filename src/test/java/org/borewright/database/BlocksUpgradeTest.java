package org.borewright.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Blocks that were told apart by the case of their tags. No service is started, but both databases are asked. */
@Tag("io.quarkus.test.junit.QuarkusTest")
class BlocksUpgradeTest {

    private static final String URL = TestDatabase.own(TestDatabase.TWO_STARTS).get("quarkus.datasource.jdbc.url");

    private static final String USER = TestDatabase.isPostgres() ? "postgres" : "";

    private static FluentConfiguration tables() {
        return Flyway.configure().dataSource(URL, USER, "").schemas("tagged_blocks");
    }

    @Test
    void noneIsLostAndOneOfThemIsFoundWhateverTheCase() throws SQLException {
        tables().target("7").load().migrate();
        try (Connection connection = DriverManager.getConnection(URL, USER, "");
                Statement statement = connection.createStatement()) {
            for (String tag : List.of("B-17", "b-17", "C-3", "B-18")) {
                statement.execute(
                        "insert into \"tagged_blocks\".blocks (tag, engine) values ('" + tag + "', 'HALVERN-131')");
            }

            tables().load().migrate();

            List<String> found = new ArrayList<>();
            try (ResultSet row = statement.executeQuery(
                    "select tag, folded, kind from \"tagged_blocks\".blocks order by lower(tag)")) {
                while (row.next()) {
                    found.add(row.getString(1) + " as " + row.getString(2));
                    assertThat(row.getString(3)).isEqualTo("BLOCK");
                }
            }
            assertThat(found).hasSize(4).contains("B-18 as b-18", "C-3 as c-3");
            assertThat(found.stream().filter(one -> one.endsWith(" as b-17"))).hasSize(1);
            assertThat(found.stream().filter(one -> one.endsWith("-17 as null")))
                    .hasSize(1);
        }
    }
}
