package org.borewright.storm;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.borewright.order.journal.Digest;
import org.borewright.order.journal.Entry;
import org.borewright.order.journal.Matter;
import org.borewright.order.journal.Verification;

/** The journal read by statements of its own, each line with the rows that it speaks of, and each order with the last line that tells of it. */
final class Sealed {

    private final Connection tables;

    /** Of the rows written with each version of each order, so far. */
    private final Map<List<Long>, Digest> written = new HashMap<>();

    private final Map<Long, Matter> last = new HashMap<>();

    Sealed(Connection tables) {
        this.tables = tables;
    }

    /** Something that is done with each row. */
    private interface Reading {
        void of(ResultSet row) throws SQLException;
    }

    private void each(String query, Reading reading) throws SQLException {
        try (Statement statement = tables.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            while (row.next()) {
                reading.of(row);
            }
        }
    }

    private void each(String query, long id, Reading reading) throws SQLException {
        try (PreparedStatement statement = tables.prepareStatement(query)) {
            statement.setLong(1, id);
            try (ResultSet row = statement.executeQuery()) {
                while (row.next()) {
                    reading.of(row);
                }
            }
        }
    }

    boolean holds() throws SQLException {
        each("select * from order_papers order by id", row -> write(row, paper(row)));
        each("select * from quotes order by id", row -> write(row, quote(row)));
        each("select * from hole_lives order by id", row -> write(row, hole(row)));
        Verification[] found = {Verification.BEGUN};
        each("select * from journal order by position", row -> found[0] = found[0].with(line(row), written(row)));
        each(
                "select position, seal from journal_head",
                row -> found[0] = found[0].endingAt(row.getLong("position"), row.getString("seal")));
        each("select * from orders", row -> found[0] = isTold(row) ? found[0] : found[0].brokenOff());
        return !found[0].broken();
    }

    private void write(ResultSet row, Digest digest) throws SQLException {
        written.computeIfAbsent(
                        List.of(row.getLong("order_number"), row.getLong("order_version")), first -> new Digest())
                .text(digest.hex());
    }

    private String written(ResultSet line) throws SQLException {
        return written.getOrDefault(List.of(line.getLong("order_number"), line.getLong("order_version")), new Digest())
                .hex();
    }

    private Entry line(ResultSet row) throws SQLException {
        Optional<Long> order = Optional.ofNullable(row.getObject("order_number", Long.class));
        int version = row.getInt("order_version");
        String rows = row.getString("written");
        Optional<Matter> matter =
                Optional.ofNullable(row.getString("standing")).map(standing -> new Matter(version, rows, standing));
        order.ifPresent(number -> matter.ifPresent(of -> last.put(number, of)));
        return new Entry(
                row.getLong("position"),
                at(row, "at"),
                row.getString("by_whom"),
                row.getString("subject"),
                order,
                row.getString("did"),
                row.getString("before_it"),
                row.getString("after_it"),
                matter,
                row.getString("seal"));
    }

    private Digest paper(ResultSet row) throws SQLException {
        Digest all = begun(row).text(row.getString("kind")).time(at(row, "at"));
        texts(all, row, "by_whom", "says", "request", "answer", "design", "size");
        Map<String, List<String>> pistons = new TreeMap<>();
        each(
                "select cylinder, tag, number from fitted_pistons where paper = ?",
                row.getLong("id"),
                piston -> pistons.put(
                        piston.getString("cylinder"),
                        Arrays.asList(piston.getString("tag"), piston.getString("number"))));
        pistons.forEach((cylinder, piston) -> {
            all.text(cylinder);
            piston.forEach(all::text);
        });
        return all;
    }

    private Digest quote(ResultSet row) throws SQLException {
        Digest all = begun(row).whole(row.getLong("number")).time(at(row, "at")).text(row.getString("by_whom"));
        all.whole(row.getLong("survey")).maybe(row.getObject("valid_until", LocalDate.class));
        texts(all, row, "says", "size", "design");
        Map<String, Long> pistons = new TreeMap<>();
        each(
                "select number, quantity from quote_pistons where quote = ?",
                row.getLong("id"),
                piston -> pistons.put(piston.getString("number"), piston.getLong("quantity")));
        pistons.forEach((number, quantity) -> {
            all.text(number);
            if (quantity != 0) {
                all.whole(quantity);
            }
        });
        SortedSet<String> rings = new TreeSet<>();
        each(
                "select number from quote_ring_sets where quote = ?",
                row.getLong("id"),
                set -> rings.add(set.getString("number")));
        rings.forEach(set -> all.text("ring set").text(set));
        all.text(row.getString("document"));
        Map<String, List<Long>> parts = new TreeMap<>();
        each(
                "select number, quantity, lead_days from quote_parts where quote = ?",
                row.getLong("id"),
                part -> parts.put(
                        part.getString("number"), List.of(part.getLong("quantity"), part.getLong("lead_days"))));
        parts.forEach((number, figures) -> {
            all.text(number);
            figures.forEach(all::whole);
        });
        return all;
    }

    private static Digest hole(ResultSet row) throws SQLException {
        Digest all = new Digest().whole(row.getLong("id"));
        texts(all, row, "block", "cylinder");
        all.whole(row.getLong("order_number"))
                .whole(row.getLong("order_version"))
                .time(at(row, "at"));
        texts(all, row, "by_whom", "what", "size");
        for (String figure : List.of("smallest", "largest", "left_by_metal", "left_by_pistons")) {
            all.maybe(row.getObject(figure));
        }
        texts(all, row, "says");
        return row.getString("barrel") == null ? all : all.text(row.getString("barrel"));
    }

    private static Digest begun(ResultSet row) throws SQLException {
        return new Digest()
                .whole(row.getLong("id"))
                .whole(row.getLong("order_number"))
                .whole(row.getLong("order_version"));
    }

    private boolean isTold(ResultSet row) throws SQLException {
        long number = row.getLong("number");
        Digest all = new Digest().whole(number).whole(row.getLong("version"));
        texts(all, row, "kind", "state", "customer", "engine", "block", "notes");
        all.time(at(row, "opened_at")).maybe(row.getObject("opened_on", LocalDate.class));
        Map<String, String> barrels = new TreeMap<>();
        each(
                "select cylinder, tag from order_barrels where order_number = ?",
                number,
                barrel -> barrels.put(barrel.getString("cylinder"), barrel.getString("tag")));
        barrels.forEach((cylinder, tag) -> all.text("barrel").text(cylinder).text(tag));
        all.maybe(row.getObject("accepted_quote"));
        if (row.getObject("quote_given_up") != null) {
            all.text("given up").whole(row.getLong("quote_given_up"));
        }
        Instant until = row.getObject("held_until") == null ? null : at(row, "held_until");
        all.maybe(until == null ? null : ChronoUnit.MICROS.between(Instant.EPOCH, until));
        Map<String, List<Object>> held = new TreeMap<>();
        each(
                "select * from reservations where order_number = ?",
                number,
                part -> held.put(
                        part.getString("number"),
                        Arrays.asList(
                                part.getLong("put_aside"),
                                part.getLong("to_come"),
                                part.getObject("expected_on", LocalDate.class))));
        held.forEach((part, figures) -> all.text(part)
                .whole((Long) figures.get(0))
                .whole((Long) figures.get(1))
                .maybe(figures.get(2)));
        return last.containsKey(number) && last.get(number).standing().equals(all.hex());
    }

    private static void texts(Digest all, ResultSet row, String... columns) throws SQLException {
        for (String column : columns) {
            all.text(row.getString(column));
        }
    }

    private static Instant at(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
