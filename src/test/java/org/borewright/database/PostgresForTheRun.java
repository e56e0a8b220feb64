package org.borewright.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.platform.launcher.LauncherSession;
import org.junit.platform.launcher.LauncherSessionListener;

/** Starts a server before the first test of a run that is to be on PostgreSQL: {@code -Dborewright.test.on=postgresql}. */
public final class PostgresForTheRun implements LauncherSessionListener {

    /** Also the name of the database that the server begins with. */
    private static final String USER = "postgres";

    private EmbeddedPostgres server;

    @Override
    public void launcherSessionOpened(LauncherSession session) {
        if (!"postgresql".equals(System.getProperty("borewright.test.on"))) {
            return;
        }
        try {
            server = EmbeddedPostgres.start();
            for (String name : List.of(
                    TestDatabase.OWN_SHOP, TestDatabase.TWO_STARTS, TestDatabase.UPGRADES, TestDatabase.DEMO_ORDERS)) {
                make(name);
            }
        } catch (IOException notStarted) {
            throw new UncheckedIOException(notStarted);
        } catch (SQLException refused) {
            throw new IllegalStateException(refused);
        }
        String address = "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/";
        System.setProperty(TestDatabase.SERVER, address);
        System.setProperty("quarkus.datasource.jdbc.url", address + USER);
        System.setProperty("quarkus.datasource.username", USER);
    }

    private void make(String name) throws SQLException {
        try (Connection any = server.getPostgresDatabase().getConnection();
                Statement statement = any.createStatement()) {
            statement.execute("create database \"" + name + "\"");
        }
    }

    @Override
    public void launcherSessionClosed(LauncherSession session) {
        if (server != null) {
            try {
                server.close();
            } catch (IOException notStopped) {
                throw new UncheckedIOException(notStopped);
            }
        }
    }
}
