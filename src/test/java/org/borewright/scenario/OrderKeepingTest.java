package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.borewright.database.TestDatabase;
import org.borewright.order.desk.OrderDesk;
import org.borewright.order.store.JournalHead;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What must hold of orders whatever happens to them: time passes, two come at once, somebody edits the tables. */
@QuarkusTest
@TestProfile(OwnShop.class)
class OrderKeepingTest {

    private static final String BOX = "NH-H131-CB050";

    private static int tags;

    @Inject
    OrderDesk desk;

    @Inject
    Clock clock;

    @Inject
    EntityManager tables;

    @BeforeEach
    void theShelfIsFull() {
        List.of(BOX, "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
    }

    private static Orders accepted() {
        Orders order = Orders.quoted("OK-" + ++tags);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        return order;
    }

    private Instant days(int from) {
        return clock.instant().plus(Duration.ofDays(from));
    }

    /** Put aside for 14 days when nothing else is configured. */
    @Test
    void whatIsNotConfirmedInTimeGoesBackToTheShelf() {
        Orders order = accepted();
        int left = Orders.left(BOX);

        assertThat(desk.runOut(order.number(), days(13))).isFalse();
        assertThat(Orders.left(BOX)).isEqualTo(left);
        assertThat(desk.runOut(order.number(), days(15))).isTrue();

        assertThat(Orders.left(BOX)).isEqualTo(left + 1);
        order.seen().body("state", equalTo("quoted")).body("held", empty()).body("heldUntil", nullValue());
        given().queryParam("order", order.number())
                .get("/api/journal")
                .then()
                .body("lines.find { it.did == 'run out' }.by", equalTo("the clock"));
        assertThat(desk.runOut(order.number(), days(16))).isFalse();
    }

    @Test
    void whatIsConfirmedNeverRunsOut() {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);

        assertThat(desk.runOut(order.number(), days(1_000))).isFalse();

        order.seen().body("state", equalTo("confirmed")).body("held.number", hasItem(BOX));
    }

    /** Of an order that waits for the customer's second yes the first one's parts stay no longer than they were put aside for. */
    @Test
    void whatDidNotCleanUpBeforeItWasConfirmedStillRunsOut() {
        Orders order = accepted();
        order.does("did-not-clean-up", Orders.SINGLE_WORN.replace("53.720", "53.900"))
                .statusCode(200);

        assertThat(desk.runOut(order.number(), days(15))).isTrue();

        order.seen().body("state", equalTo("surveyed")).body("held", empty());
    }

    @Test
    void theSameRequestFromTwoSidesAtOnceIsDoneOnce() throws Exception {
        Orders order = Orders.quoted("OK-" + ++tags);
        int left = Orders.left(BOX);
        String key = Orders.key();

        List<Response> answers =
                atOnce(8, () -> Orders.post("/api/orders/" + order.number() + "/accept", 3, key, "{\"quote\":1}"));

        assertThat(answers).allSatisfy(answer -> answer.then().statusCode(200));
        assertThat(answers.stream().map(Response::asString).distinct()).hasSize(1);
        assertThat(Orders.left(BOX)).isEqualTo(left - 1);
    }

    @Test
    void ofManyWhoWantTheLastBoxOneGetsIt() throws Exception {
        List<Orders> orders = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            orders.add(Orders.quoted("OK-" + ++tags));
            List.of("HV131-SE", "HV131-GK").forEach(part -> Orders.arrive(part, 1));
        }
        while (Orders.left(BOX) > 1) {
            accepted();
        }

        List<Integer> statuses = new ArrayList<>();
        List<Callable<Response>> all = orders.stream()
                .<Callable<Response>>map(order -> () ->
                        Orders.post("/api/orders/" + order.number() + "/accept", 3, Orders.key(), "{\"quote\":1}"))
                .toList();
        for (Response answer : atOnce(all)) {
            statuses.add(answer.statusCode());
        }

        assertThat(statuses).containsExactlyInAnyOrder(200, 409, 409, 409, 409, 409);
        assertThat(Orders.left(BOX)).isZero();
    }

    /** The second waited for the first: what it had read of the order before is no longer so. */
    @ParameterizedTest
    @CsvSource({"confirm", "withdraw", "did-not-clean-up"})
    void ofSeveralChangesMeantForOneVersionOneIsMade(String move) throws Exception {
        Orders order = accepted();
        String body = switch (move) {
            case "confirm" -> Orders.PISTON_IN_HAND;
            case "withdraw" -> "{\"reason\":\"sold the boat\"}";
            default -> Orders.SINGLE_WORN;
        };

        List<Response> answers = atOnce(
                6,
                () -> Orders.post("/api/orders/" + order.number() + "/" + move, order.version(), Orders.key(), body));

        assertThat(answers.stream().map(Response::statusCode)).containsExactlyInAnyOrder(200, 412, 412, 412, 412, 412);
    }

    /** On H2, which lets nobody wait for a lock for more than two seconds here; PostgreSQL lets them wait as long as it takes. */
    @Test
    void whoFindsOthersInTheWayAgainAndAgainIsToldToComeBack() {
        assumeThat(TestDatabase.isPostgres()).isFalse();
        Orders order = Orders.quoted("OK-" + ++tags);
        String key = Orders.key();

        QuarkusTransaction.requiringNew().run(() -> {
            JournalHead.held();
            order.does("accept", "{\"quote\":1}", key)
                    .statusCode(503)
                    .header("Retry-After", "1")
                    .body("type", equalTo("/problems/busy"));
        });

        order.does("accept", "{\"quote\":1}", key).statusCode(200);
    }

    private static List<Response> atOnce(int times, Callable<Response> request) throws Exception {
        return atOnce(Collections.nCopies(times, request));
    }

    private static List<Response> atOnce(List<Callable<Response>> requests) throws Exception {
        ExecutorService senders = Executors.newFixedThreadPool(requests.size());
        try {
            List<Response> answers = new ArrayList<>();
            for (Future<Response> sent : senders.invokeAll(requests)) {
                answers.add(sent.get());
            }
            return answers;
        } finally {
            senders.shutdown();
        }
    }

    @ParameterizedTest
    @CsvSource({"by_whom, Eve", "after_it, nothing", "did, approve"})
    void aJournalEditedBehindOurBackIsFoundOut(String column, String edited) {
        Orders order = Orders.opened("parts alone", null);
        order.does("survey", Orders.SINGLE_WORN);
        int position = given().queryParam("order", order.number())
                .get("/api/journal")
                .then()
                .extract()
                .path("lines[0].position");
        String before = change(column, position, edited);

        given().get("/api/journal/verification")
                .then()
                .body("holds", equalTo(false))
                .body("broken", equalTo(position))
                .body("lines", equalTo(position - 1));

        change(column, position, before);
        given().get("/api/journal/verification").then().body("holds", equalTo(true));
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
                "confirm | fitted_pistons | tag         | paper = (select id from order_papers where order_number = :order and kind = 'BENCH') | concat(tag, 'x')",
                "finish  | hole_lives     | what        | order_number = :order and what = 'FINISHED' | replace(what, 'FINISHED', 'SURVEYED')",
                "finish  | hole_lives     | order_version | order_number = :order and what = 'FINISHED' | 0",
                "finish  | orders         | notes       | number = :order | concat(notes, 'x')",
                "finish  | orders         | accepted_quote | number = :order | 2",
                "finish  | reservations   | put_aside   | order_number = :order and number like '%CB%' | put_aside + 1",
            })
    void aRowEditedBehindOurBackIsFoundOutAtItsLine(String did, String table, String column, String which, String to) {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("finish", Orders.HONED).statusCode(200);
        int position = given().queryParam("order", order.number())
                .get("/api/journal")
                .path("lines.find { it.did == '" + did + "' }.position");
        String where = which.replace(":order", Long.toString(order.number()));
        Object before = one("select " + column + " from " + table + " where " + where);

        assertThat(change("update %s set %s = %s where %s".formatted(table, column, to, where)))
                .isEqualTo(1);
        given().get("/api/journal/verification")
                .then()
                .body("holds", equalTo(false))
                .body("broken", equalTo(position))
                .body("lines", equalTo(position - 1));

        String edited = column.equals("what") || column.equals("order_version")
                ? which.replaceAll(" and what.*", " and id = (select max(id) from hole_lives)")
                        .replace(":order", Long.toString(order.number()))
                : where;
        change("update %s set %s = ?1 where %s".formatted(table, column, edited), before);
        given().get("/api/journal/verification").then().body("holds", equalTo(true));
    }

    @ParameterizedTest
    @CsvSource({"0, finish", "2, survey", "6, finish", "7, finish"})
    void aHoleAddedBehindOurBackIsFoundOut(int version, String did) {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("finish", Orders.HONED).statusCode(200);
        int position = given().queryParam("order", order.number())
                .get("/api/journal")
                .path("lines.find { it.did == '" + did + "' }.position");

        change("""
                insert into hole_lives (block, cylinder, order_number, at, by_whom, what, says, order_version)
                select block, '1', number, current_timestamp, 'Eve', 'FINISHED', 'as good as new', %d from orders where number = %d""".formatted(version, order.number()));
        given().get("/api/journal/verification")
                .then()
                .body("holds", equalTo(false))
                .body("broken", equalTo(position));

        change("delete from hole_lives where by_whom = 'Eve'");
        given().get("/api/journal/verification").then().body("holds", equalTo(true));
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

    /** @return what stood there */
    private String change(String column, int position, String text) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Object before = tables.createNativeQuery("select " + column + " from journal where position = ?1")
                    .setParameter(1, position)
                    .getSingleResult();
            tables.createNativeQuery("update journal set " + column + " = ?1 where position = ?2")
                    .setParameter(1, text)
                    .setParameter(2, position)
                    .executeUpdate();
            return (String) before;
        });
    }
}
