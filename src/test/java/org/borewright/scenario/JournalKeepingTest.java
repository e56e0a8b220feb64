package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.borewright.order.store.JournalHead;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the journal proves, and what somebody who edits the tables behind our back cannot hide. */
@QuarkusTest
@TestProfile(OwnShop.class)
class JournalKeepingTest {

    private static final String BOX = "NH-H131-CB050";

    private static int tags;

    @Inject
    EntityManager tables;

    @BeforeEach
    void theShelfIsFull() {
        List.of(BOX, "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
    }

    private static Orders finished() {
        Orders order = Orders.quotedWithBarrel("JK-" + ++tags);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("finish", Orders.HONED).statusCode(200);
        return order;
    }

    /** The position of the line that tells of a deed. */
    private static int line(Orders order, String did) {
        return given().queryParam("order", order.number())
                .get("/api/journal")
                .path("lines.find { it.did == '" + did + "' }.position");
    }

    private static JsonPath verification() {
        return given().get("/api/journal/verification")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private static void isBrokenAt(int position) {
        given().get("/api/journal/verification")
                .then()
                .statusCode(200)
                .body("holds", equalTo(false))
                .body("broken", equalTo(position))
                .body("lines", equalTo(position - 1));
    }

    private static void isWhole() {
        given().get("/api/journal/verification").then().body("holds", equalTo(true));
    }

    /** What a line says is sealed with it, and so is the number that it is found by; an order that has lost its last line breaks the one before. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "survey  | by_whom       | 'Eve'",
                "survey  | after_it      | 'nothing'",
                "survey  | did           | 'approve'",
                "survey  | subject       | 'order 0'",
                "survey  | order_version | order_version + 1",
                "survey  | order_version | null",
                "survey  | written       | null",
                "survey  | standing      | null",
                "receive | order_number  | order_number - 1",
                "receive | order_number  | null",
            })
    void aLineEditedBehindOurBackIsFoundOut(String did, String column, String edited) {
        Orders order = Orders.opened("parts alone", null);
        order.does("survey", Orders.SINGLE_WORN);
        int position = line(order, did);
        String where = "position = " + line(order, "survey");
        Object before = one("select " + column + " from journal where " + where);

        change("update journal set %s = %s where %s".formatted(column, edited, where));
        isBrokenAt(position);

        change("update journal set %s = ?1 where %s".formatted(column, where), before);
        isWhole();
    }

    /** Nor can the journal be made to speak of another order, so that this one may be rewritten. */
    @Test
    void anOrderThatNoLineLeadsToAnyMoreIsFoundOut() {
        Orders order = Orders.opened("parts alone", null);
        int position = line(order, "receive");
        String of = "%d".formatted(order.number());

        change("update journal set order_number = null where order_number = " + of);
        change("update orders set notes = 'paid' where number = " + of);
        isBrokenAt(position);

        change("update orders set notes = '' where number = " + of);
        change("update journal set order_number = ?1 where position = ?2", order.number(), position);
        isWhole();
    }

    /**
     * What a line speaks of is proven with it: papers, quotes with their parts and pistons, and holes by the line they were written with,
     * the order and what is held for it by the last.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "survey  | order_papers   | answer      | order_number = :order and kind = 'SURVEY' | replace(answer, 'HALVERN', 'Halvern')",
                "survey  | order_papers   | by_whom     | order_number = :order and kind = 'SURVEY' | concat(by_whom, 'x')",
                "survey  | hole_lives     | largest     | order_number = :order and what = 'SURVEYED' | largest - 1000",
                "quote   | quotes         | document    | order_number = :order | replace(document, '90.1', '80.1')",
                "quote   | quotes         | valid_until | order_number = :order | valid_until + interval '1' day",
                "quote   | quote_parts    | quantity    | quote = (select id from quotes where order_number = :order) and number like '%CB%' | quantity + 1",
                "quote   | quote_pistons  | number      | quote = (select id from quotes where order_number = :order) | concat(number, 'x')",
                "quote   | quote_pistons  | quantity    | quote = (select id from quotes where order_number = :order) | quantity + 1",
                "quote   | quote_ring_sets | number     | quote = (select id from quotes where order_number = :order) | concat(number, 'x')",
                "confirm | fitted_pistons | tag         | paper = (select id from order_papers where order_number = :order and kind = 'BENCH') | concat(tag, 'x')",
                "finish  | hole_lives     | what        | order_number = :order and what = 'FINISHED' | replace(what, 'FINISHED', 'SURVEYED')",
                "finish  | hole_lives     | order_version | order_number = :order and what = 'FINISHED' | 0",
                "finish  | hole_lives     | barrel      | order_number = :order and what = 'FINISHED' | concat(barrel, 'x')",
                "finish  | order_barrels  | tag         | order_number = :order | concat(tag, 'x')",
                "finish  | orders         | notes       | number = :order | concat(notes, 'x')",
                "finish  | orders         | accepted_quote | number = :order | 2",
                "finish  | reservations   | put_aside   | order_number = :order and number like '%CB%' | put_aside + 1",
            })
    void aRowEditedBehindOurBackIsFoundOutAtItsLine(String did, String table, String column, String which, String to) {
        Orders order = finished();
        int position = line(order, did);
        String where = which.replace(":order", Long.toString(order.number()));
        Object before = one("select " + column + " from " + table + " where " + where);

        assertThat(change("update %s set %s = %s where %s".formatted(table, column, to, where)))
                .isEqualTo(1);
        isBrokenAt(position);

        String edited = column.equals("what") || column.equals("order_version")
                ? which.replaceAll(" and what.*", " and id = (select max(id) from hole_lives)")
                        .replace(":order", Long.toString(order.number()))
                : where;
        change("update %s set %s = ?1 where %s".formatted(table, column, edited), before);
        isWhole();
    }

    @ParameterizedTest
    @CsvSource({"0, finish", "2, survey", "6, finish", "7, finish"})
    void aHoleAddedBehindOurBackIsFoundOut(int version, String did) {
        Orders order = finished();
        int position = line(order, did);

        change("""
                insert into hole_lives (block, cylinder, order_number, at, by_whom, what, says, order_version)
                select block, '1', number, current_timestamp, 'Eve', 'FINISHED', 'as good as new', %d from orders where number = %d""".formatted(version, order.number()));
        isBrokenAt(position);

        change("delete from hole_lives where by_whom = 'Eve'");
        isWhole();
    }

    /** At the line that it was written with, or that is the last to tell of the order; at its own place where none tells of it any more. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "finish  | hole_lives where order_number = :order and what = 'FINISHED'",
                "finish  | fitted_pistons where paper = :paper; order_papers where id = :paper",
                "quote   | quote_parts where quote = (select id from quotes where order_number = :order)",
                "finish  | reservations where order_number = :order",
                "survey  | journal where order_number = :order and did = 'survey'",
                "confirm | journal where order_number = :order and did = 'finish'",
            })
    void aRowTakenAwayBehindOurBackIsFoundOut(String did, String rows) {
        Orders order = finished();
        Object paper = one("select max(id) from order_papers where order_number = " + order.number());
        int position = line(order, did);

        List<String> taken = List.of(rows.replace(":order", Long.toString(order.number()))
                .replace(":paper", paper.toString())
                .split("; "));
        taken.forEach(this::take);
        isBrokenAt(position);

        for (int i = taken.size(); i > 0; i--) {
            putBack(taken.get(i - 1));
        }
        isWhole();
    }

    @Test
    void anOrderTakenAwayBehindOurBackIsFoundOutAtItsFirstLine() {
        Orders order = Orders.opened("parts alone", null);
        int position = line(order, "receive");
        String row = "orders where number = " + order.number();

        take(row);
        isBrokenAt(position);

        putBack(row);
        isWhole();
    }

    /** Of an order, of a hook, of the shelf: whatever the last line is of, the head knows that there was one. */
    @ParameterizedTest
    @CsvSource({"receive", "arrive"})
    void theLastLineTakenAwayBehindOurBackIsFoundOutAtItsPlace(String did) {
        if (did.equals("receive")) {
            Orders.opened("parts alone", null);
        } else {
            Orders.arrive(BOX, 1);
        }
        int last = verification().getInt("lines");
        String row = "journal where position = " + last;

        take(row);
        isBrokenAt(last);

        putBack(row);
        isWhole();
    }

    /** It would tell of rows that no line speaks of, where nobody reads. */
    @Test
    void aLineBeforeTheFirstIsFoundOut() {
        Orders order = finished();
        change("""
                insert into journal (position, at, by_whom, subject, did, before_it, after_it, seal, order_number, order_version)
                values (0, current_timestamp, 'Eve', 'order %d', 'finish', '', '', '', %d, 9)""".formatted(order.number(), order.number()));
        isBrokenAt(1);

        change("delete from journal where position = 0");
        isWhole();
    }

    @Test
    void anOrderThatNoLineTellsOfIsFoundOutAfterTheLast() {
        int last = verification().getInt("lines");
        change("""
                insert into orders (version, kind, state, customer, engine, notes, opened_at, opened_on)
                values (1, 'PARTS_ALONE', 'RECEIVED', 'Eve', 'HALVERN-131', '', current_timestamp, current_date)""");
        isBrokenAt(last + 1);

        change("delete from orders where customer = 'Eve'");
        isWhole();
    }

    /** Set back by one line, which then is one too many; taken away, so that no line is the last. */
    @Test
    void aHeadThatIsNotOfTheLastLineIsFoundOut() {
        int last = verification().getInt("lines");
        String seal = verification().getString("seal");
        Object before = one("select seal from journal where position = " + (last - 1));

        change("update journal_head set position = ?1, seal = ?2", (long) last - 1, before);
        isBrokenAt(last);
        change("update journal_head set position = ?1, seal = ?2", (long) last, before);
        isBrokenAt(last + 1);
        change("update journal_head set seal = ?1", seal);
        take("journal_head where id = 1");
        isBrokenAt(last + 1);

        putBack("journal_head where id = 1");
        isWhole();
    }

    /** Whoever adds a line holds the head for as long; the proof goes by what is committed, and nobody waits for it. */
    @Test
    void theProofWaitsForNobody() {
        QuarkusTransaction.requiringNew().run(() -> {
            JournalHead.held();
            isWhole();
        });
    }

    @Test
    void whileOrdersMoveOnTheJournalHolds() throws Exception {
        Orders order = Orders.opened("parts alone", null);
        ExecutorService desk = Executors.newSingleThreadExecutor();
        try {
            Future<?> moves = desk.submit(() -> {
                for (int i = 0; i < 40; i++) {
                    order.does("notes", "{\"notes\":\"call " + i + "\"}").statusCode(200);
                }
            });
            do {
                isWhole();
            } while (!moves.isDone());
            moves.get();
        } finally {
            desk.shutdown();
        }
    }

    /** Put together by a reader from what the contract says of a seal. */
    @Test
    void theSealsCanBeReckonedAgainFromTheFeedAlone() throws Exception {
        finished();
        String seal = "0".repeat(64);
        long after = 0;
        JsonPath page = page(after);
        while (page.getLong("after") > after) {
            for (Map<String, Object> line : page.<Map<String, Object>>getList("lines")) {
                seal = sealOf(line, seal);
                assertThat(line.get("seal")).isEqualTo(seal);
            }
            after = page.getLong("after");
            page = page(after);
        }

        assertThat(verification().getString("seal")).isEqualTo(seal);
        assertThat(verification().getLong("lines")).isEqualTo(after);
    }

    private static JsonPath page(long after) {
        return given().queryParam("after", after)
                .queryParam("limit", 50)
                .get("/api/journal")
                .jsonPath();
    }

    private static String sealOf(Map<String, Object> line, String before) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(((Number) line.get("position")).longValue());
        out.writeLong(ChronoUnit.MICROS.between(Instant.EPOCH, Instant.parse((String) line.get("at"))));
        write(out, before);
        for (String name : List.of("by", "subject", "did", "before", "after")) {
            write(out, line.get(name));
        }
        if (line.get("covers").equals("words and rows")) {
            out.writeLong(((Number) line.get("version")).longValue());
            write(out, line.get("written"));
            write(out, line.get("standing"));
        }
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray()));
    }

    private static void write(DataOutputStream out, Object text) throws IOException {
        byte[] utf8 = ((String) text).getBytes(StandardCharsets.UTF_8);
        out.writeInt(utf8.length);
        out.write(utf8);
    }

    /** Takes rows away, and keeps them in a table beside. */
    private void take(String rows) {
        change("create table kept_" + tableOf(rows) + " as select * from " + rows);
        assertThat(change("delete from " + rows)).isPositive();
    }

    private void putBack(String rows) {
        change("insert into " + tableOf(rows) + " select * from kept_" + tableOf(rows));
        change("drop table kept_" + tableOf(rows));
    }

    private static String tableOf(String rows) {
        return rows.substring(0, rows.indexOf(' '));
    }

    private int change(String statement, Object... with) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var change = tables.createNativeQuery(statement);
            for (int i = 0; i < with.length; i++) {
                change.setParameter(i + 1, with[i]);
            }
            return change.executeUpdate();
        });
    }

    private Object one(String query) {
        return QuarkusTransaction.requiringNew()
                .call(() -> tables.createNativeQuery(query).getSingleResult());
    }
}
