package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.borewright.catalog.Revision;
import org.borewright.storm.StartedService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starts beside a bad catalogue or a database that is held, as whoever installs the service meets them: packaged, and a process of its own. */
class RefusedStartIT {

    private static final int REFUSED = 3;
    private static final String FILE = "jdbc:h2:file:";

    /** Filled without a catalogue: what was migrated, and the rows that are there to be held. */
    private static final Set<String> OF_THE_MIGRATIONS = Set.of("flyway_schema_history", "JOURNAL_HEAD", "LOADING");

    @TempDir
    Path home;

    private Path files;

    @BeforeEach
    void spoilTheCatalogue() throws IOException {
        files = Files.createDirectory(home.resolve("catalog-data"));
        Folder.in(files)
                .cell("boxes.csv", 2, "part", "NO-SUCH-PART")
                .cell("prices.csv", 3, "price", "cheap")
                .cell("prices.csv", 4, "currency", "")
                .cell("sizes.csv", 3, "further_work", "perhaps")
                .cell("stock.csv", 2, "on_hand", "-1");
    }

    @Test
    void aBadCatalogueIsToldWholeAndKeptOutAndOnceRepairedItIsLoadedAndKept() throws Exception {
        try (StartedService refused = StartedService.in(home)) {
            while (refused.isRunning()) {
                assertThat(refused.listens()).isFalse();
            }
            assertThat(refused.exitCode()).isEqualTo(REFUSED);
            assertThat(refused.output())
                    .contains(
                            "The catalogue in " + files + " was not loaded, and nothing was changed:",
                            "boxes.csv line 2, part \"NO-SUCH-PART\": no file of parts has this number",
                            "prices.csv line 3, price \"cheap\": is not a number",
                            "prices.csv line 4, currency: is empty",
                            "sizes.csv line 3, further_work \"perhaps\": is none of yes, no",
                            "stock.csv line 2, on_hand \"-1\": is outside 0 to 1000000")
                    .contains(Delivery.from(files).report(files))
                    .doesNotContain("Listening on", "\tat ");
        }
        assertThat(filledTables()).isEmpty();

        repairTheCatalogue();
        try (StartedService loaded = StartedService.in(home)) {
            assertThat(loaded.answerOnceItListens("/api/engines"))
                    .contains("\"HALVERN-T2\"", "\"OSTRAVEL-4\"", "\"total\":2")
                    .contains(Delivery.from(files).revision().fit());
        }
        assertThat(filledTables()).contains("ENGINES", "PISTONS", "PRICES", "REVISIONS");

        Revision kept = Delivery.from(files).revision();
        new Folder(files).remove("stock.csv");
        try (StartedService keeping = StartedService.in(home)) {
            assertThat(keeping.answerOnceItListens("/api/engines")).contains(kept.fit());
            assertThat(keeping.output()).contains(Delivery.from(files).passedOver(kept, files));
        }
    }

    /** The database is asked before the files are read. */
    @Test
    void aDatabaseThatARunningStartHoldsIsToldInASentence() throws Exception {
        Path database = home.resolve("data").resolve("borewright");
        try (Connection held = DriverManager.getConnection(FILE + database);
                StartedService refused = StartedService.in(home)) {
            while (refused.isRunning()) {
                assertThat(refused.listens()).isFalse();
            }
            assertThat(held.isValid(0)).isTrue();
            assertThat(refused.exitCode()).isEqualTo(REFUSED);
            assertThat(refused.output())
                    .contains("The database " + database + " is held by another start of the service that still runs.")
                    .contains("-Dborewright.home=", "-Dquarkus.http.port=")
                    .doesNotContain("Caused by", "\tat ");
        }
    }

    private void repairTheCatalogue() throws IOException {
        try (Stream<Path> spoilt = Files.list(files)) {
            for (Path file : spoilt.toList()) {
                Files.delete(file);
            }
        }
        Folder.in(files);
    }

    /** The tables of the catalogue with anything in them. */
    private List<String> filledTables() throws SQLException {
        List<String> filled = new ArrayList<>();
        try (Connection database =
                DriverManager.getConnection(FILE + home.resolve("data").resolve("borewright") + ";IFEXISTS=TRUE")) {
            List<String> tables = new ArrayList<>();
            try (ResultSet found = database.getMetaData().getTables(null, "PUBLIC", "%", new String[] {"BASE TABLE"})) {
                while (found.next()) {
                    tables.add(found.getString("TABLE_NAME"));
                }
            }
            assertThat(tables).contains("ENGINES", "PISTONS", "PRICES", "REVISIONS");
            for (String table : tables) {
                try (var statement = database.createStatement();
                        ResultSet row = statement.executeQuery("select 1 from \"" + table + "\" limit 1")) {
                    if (row.next() && !OF_THE_MIGRATIONS.contains(table)) {
                        filled.add(table);
                    }
                }
            }
        }
        return filled;
    }
}
