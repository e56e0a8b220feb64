package org.borewright.storm;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A shop of its own with the demo catalogue: its folder, its database, and the machines that serve it.
 *
 * @param home its folder
 * @param server PostgreSQL; empty where the shop has one machine and an H2 file
 */
record Shop(Path home, Optional<EmbeddedPostgres> server) implements AutoCloseable {

    /** Both databases. */
    enum Kind {
        H2,
        POSTGRESQL
    }

    /** To compile it well would take longer than it runs. */
    static final String SHORT_LIVED = "-XX:TieredStopAtLevel=1";

    private static final Path DEMO = Path.of("catalog-data");

    /** A new shop without anything in its database. */
    static Shop on(Kind kind, Path home) throws IOException {
        Path files = Files.createDirectory(home.resolve("catalog-data"));
        try (Stream<Path> demo = Files.list(DEMO)) {
            for (Path file : demo.filter(one -> one.toString().endsWith(".csv")).toList()) {
                Files.copy(file, files.resolve(file.getFileName()));
            }
        }
        return new Shop(home, kind == Kind.H2 ? Optional.empty() : Optional.of(newServer()));
    }

    /** As a server is set that keeps what it says it kept; out of the box this one is made for tests and does not. */
    private static EmbeddedPostgres newServer() throws IOException {
        return EmbeddedPostgres.builder()
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("fsync", "on")
                .start();
    }

    /** Starts so many machines at once, and waits until all answer. */
    List<StartedService> open(int machines, String... options) throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of(options));
        server.ifPresent(running -> all.addAll(List.of(
                "-Dquarkus.datasource.jdbc.url=" + address(running), "-Dquarkus.datasource.username=postgres")));
        List<StartedService> started = new ArrayList<>();
        for (int i = 0; i < machines; i++) {
            started.add(StartedService.of(server.isPresent() ? "quarkus-app-pg" : "quarkus-app", home, all));
        }
        for (StartedService service : started) {
            service.answerOnceItListens("/api/engines");
        }
        return started;
    }

    private static String address(EmbeddedPostgres running) {
        return "jdbc:postgresql://127.0.0.1:" + running.getPort() + "/postgres";
    }

    /** Its tables, behind the back of the service; an H2 file only while no machine runs. */
    Connection tables() throws SQLException {
        return server.isPresent()
                ? DriverManager.getConnection(address(server.get()), "postgres", "")
                : DriverManager.getConnection(
                        "jdbc:h2:file:" + home.resolve("data").resolve("borewright")
                                + ";IFEXISTS=TRUE;WRITE_DELAY=0;LOCK_TIMEOUT=10000",
                        "",
                        "");
    }

    @Override
    public void close() throws IOException {
        if (server.isPresent()) {
            server.get().close();
        }
    }
}
