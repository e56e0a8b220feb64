package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import org.borewright.catalog.store.row.StockRow;
import org.borewright.order.desk.OrderDesk;
import org.borewright.order.store.JournalHead;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What must hold of orders whatever happens to them: time passes, two come at once. */
@QuarkusTest
@TestProfile(OwnShop.class)
class OrderKeepingTest {

    private static final String BOX = "NH-H131-CB050";

    private static int tags;

    @Inject
    OrderDesk desk;

    @Inject
    Clock clock;

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
        QuarkusTransaction.requiringNew().run(() -> StockRow.update("onHand = reserved + 1 where number = ?1", BOX));

        List<Integer> statuses = new ArrayList<>();
        List<Callable<Response>> all = orders.stream()
                .<Callable<Response>>map(order -> () ->
                        Orders.post("/api/orders/" + order.number() + "/accept", 3, Orders.key(), "{\"quote\":1}"))
                .toList();
        for (Response answer : Orders.atOnce(all)) {
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

    /** Nobody waits for a lock for more than a second here. */
    @Test
    void whoFindsOthersInTheWayAgainAndAgainIsToldToComeBack() {
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

    /** What needs no key and is not tried again waits for a lock as long, and is no fault of the service either. */
    @Test
    void whoWaitsForTheJournalTooLongIsToldToComeBack() {
        String hook = Orders.post("/api/hooks", null, Orders.key(), "{\"url\":\"http://127.0.0.1:9/told\"}")
                .header("Location");

        QuarkusTransaction.requiringNew().run(() -> {
            JournalHead.held();
            given().delete(hook + "?by=Ada")
                    .then()
                    .statusCode(503)
                    .header("Retry-After", "1")
                    .body("type", equalTo("/problems/busy"))
                    .body("detail", equalTo("Others held the same things for too long."));
        });

        given().delete(hook + "?by=Ada").then().statusCode(204);
    }

    private static List<Response> atOnce(int times, Callable<Response> request) throws Exception {
        return Orders.atOnce(Collections.nCopies(times, request));
    }
}
