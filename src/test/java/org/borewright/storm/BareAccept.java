package org.borewright.storm;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;

/**
 * The statements of a yes, and nothing around them: no HTTP, no JSON, no entities, no seal. They stand in the order in which the service
 * sends them, so that they wait for each other at the same places.
 */
final class BareAccept implements AutoCloseable {

    private static final String BODY = "{}".repeat(400);
    private static final String NO_SEAL = "0".repeat(64);

    private final Connection tables;

    BareAccept(Connection tables) throws SQLException {
        this.tables = tables;
        tables.setAutoCommit(false);
    }

    void of(long order) throws SQLException {
        String key = UUID.randomUUID().toString();
        read("select * from answered_requests where request_key = ?", key);
        tables.commit();
        run("insert into answered_requests values (?, ?, ?, 0, null, null, '')", key, NO_SEAL, now());
        read("select * from reservations where order_number = ? order by number", order);
        read("select * from orders where number = ?", order);
        read("select * from orders where number = ? for update", order);
        read("select * from orders where number = ? for update", order);
        long quote = read("select * from quotes where order_number = ? and number = 1", order);
        read("select * from order_papers where order_number = ? and kind = 'SURVEY' order by id desc limit 1", order);
        read("select * from reservations where order_number = ? order by number", order);
        putAside(order, quote);
        read("select order_number from reservations where to_come > 0 and order_number in (?)", order);
        read("select * from order_papers where order_number = ? and kind = 'BENCH' order by id desc limit 1", order);
        read("select * from reservations where order_number = ? order by number", order);
        run(
                "update orders set version = 4, state = 'ACCEPTED', accepted_quote = 1, held_until = ? where number = ?",
                now(),
                order);
        long line = read("select position, seal from journal_head where id = 1 for update") + 1;
        read("select * from reservations where order_number = ? order by number", order);
        run(
                "insert into journal values (?, ?, 'Ada', ?, 'accept', 'quoted, version 3', 'accepted, version 4', ?, ?, 4, ?, ?)",
                line,
                now(),
                "order " + order,
                NO_SEAL,
                order,
                NO_SEAL,
                NO_SEAL);
        run("update journal_head set position = ?, stock_position = ? where id = 1", line, line);
        run("update answered_requests set status = 200, version = 4, body = ? where request_key = ?", BODY, key);
        tables.commit();
    }

    private void putAside(long order, long quote) throws SQLException {
        try (PreparedStatement parts =
                tables.prepareStatement("select number, quantity from quote_parts where quote = ? order by number")) {
            parts.setLong(1, quote);
            try (ResultSet part = parts.executeQuery()) {
                while (part.next()) {
                    int count = part.getInt(2);
                    run(
                            "update stock set reserved = reserved + ? where number = ? and on_hand - reserved >= ?",
                            count,
                            part.getString(1),
                            count);
                    run(
                            "insert into reservations (order_number, number, put_aside, to_come) values (?, ?, ?, 0)",
                            order,
                            part.getString(1),
                            count);
                }
            }
        }
    }

    private static OffsetDateTime now() {
        return LocalDateTime.of(2026, 3, 2, 8, 0).atOffset(ZoneOffset.UTC);
    }

    private void run(String statement, Object... values) throws SQLException {
        try (PreparedStatement prepared = prepared(statement, values)) {
            if (prepared.executeUpdate() != 1) {
                throw new IllegalStateException(statement);
            }
        }
    }

    /** Reads every column of every row, as an entity would. @return the first number of the first row */
    private long read(String query, Object... values) throws SQLException {
        long first = 0;
        try (PreparedStatement prepared = prepared(query, values);
                ResultSet row = prepared.executeQuery()) {
            while (row.next()) {
                first = first == 0 && row.getObject(1) instanceof Number number ? number.longValue() : first;
                for (int column = 2; column <= row.getMetaData().getColumnCount(); column++) {
                    row.getObject(column);
                }
            }
        }
        return first;
    }

    private PreparedStatement prepared(String statement, Object... values) throws SQLException {
        PreparedStatement prepared = tables.prepareStatement(statement);
        for (int i = 0; i < values.length; i++) {
            prepared.setObject(i + 1, values[i]);
        }
        return prepared;
    }

    @Override
    public void close() throws SQLException {
        tables.close();
    }
}
