package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.PessimisticLockException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.borewright.order.Errand;
import org.borewright.order.RefusedException;
import org.borewright.order.desk.OrderDesk;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who gets what comes to lie free, and how long what is put aside stays so. */
@QuarkusTest
@TestProfile(OwnShop.class)
class WaitingOrdersTest {

    private static final String BOX = "NH-H131-CB050";
    private static final String GASKET = "HV131-GK";
    private static final String WORN_MORE = Orders.SINGLE_WORN.replace("53.720", "53.900");

    private static int tags;

    @Inject
    OrderDesk desk;

    @Inject
    Clock clock;

    @Inject
    EntityManager tables;

    @BeforeEach
    void theShelfIsFull() {
        List.of(BOX, "HV131-SE", GASKET).forEach(part -> Orders.arrive(part, 3).statusCode(200));
    }

    @AfterEach
    void nobodyWaitsAnyMore() {
        List.of(BOX, GASKET).forEach(part -> {
            int toCome = given().get("/api/stock/" + part).path("toCome");
            if (toCome > 0) {
                Orders.arrive(part, toCome).statusCode(200);
            }
        });
    }

    private static Orders quoted() {
        return Orders.quoted("WO-" + ++tags);
    }

    private static Orders accepted() {
        Orders order = quoted();
        order.does("accept", "{\"quote\":1}").statusCode(200);
        return order;
    }

    private Orders waiting() {
        Orders order = quoted();
        sellOut(BOX);
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        return order;
    }

    /** Somebody takes without a word all that is put aside for nobody. */
    private void sellOut(String number) {
        change("update stock set on_hand = reserved where number = ?1", number);
    }

    private void change(String statement, Object... values) {
        QuarkusTransaction.requiringNew().run(() -> {
            var change = tables.createNativeQuery(statement);
            for (int i = 0; i < values.length; i++) {
                change.setParameter(i + 1, values[i]);
            }
            assertThat(change.executeUpdate()).isEqualTo(1);
        });
    }

    private Instant days(int from) {
        return clock.instant().plus(Duration.ofDays(from));
    }

    private static String of(String number) {
        return "held.find { it.number == '" + number + "' }.";
    }

    /** Of two who wait the older one gets it, though it began to wait later than the box was sold; who comes then finds nothing. */
    @ParameterizedTest
    @CsvSource({"withdraw", "decline", "run out", "swap"})
    void whatIsPutBackGoesToTheOldestOrderThatWaits(String way) {
        Orders older = quoted();
        Orders holder = accepted();
        Orders younger = quoted();
        Orders newcomer = quoted();
        sellOut(BOX);
        younger.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        older.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);

        putBack(holder, way);

        older.seen()
                .body(of(BOX) + "putAside", equalTo(1))
                .body(of(BOX) + "toCome", equalTo(0))
                .body("version", equalTo(5))
                .body("next", hasItem("confirm"))
                .body("heldUntil", notNullValue());
        younger.seen().body(of(BOX) + "toCome", equalTo(1)).body("version", equalTo(4));
        newcomer.does("accept", "{\"quote\":1}").statusCode(409).body("type", equalTo("/problems/stock-short"));
        given().queryParam("order", older.number())
                .get("/api/journal")
                .then()
                .body("lines[4].did", equalTo("put aside"))
                .body("lines[4].after", containsString(BOX + " × 1, put back by order " + holder.number()))
                .body("lines[4].by", equalTo(way.equals("run out") ? "the clock" : "Ada"));
    }

    private void putBack(Orders holder, String way) {
        switch (way) {
            case "withdraw" ->
                holder.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
            case "run out" -> assertThat(desk.runOut(holder.number(), days(15))).isTrue();
            default -> {
                holder.does("did-not-clean-up", WORN_MORE).statusCode(200);
                holder.does("quotes", "{}").statusCode(201);
                (way.equals("swap")
                                ? holder.does("accept", "{\"quote\":2,\"mayWait\":true}")
                                : holder.does("decline", "{\"reason\":\"too dear\"}"))
                        .statusCode(200);
            }
        }
    }

    @Test
    void theTimeOfABackOrderBeginsWhenItsLastPartArrives() {
        Orders order = quoted();
        sellOut(BOX);
        sellOut(GASKET);
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200).body("heldUntil", nullValue());
        assertThat(desk.runOut(order.number(), days(1_000))).isFalse();

        Orders.arrive(BOX, 1).statusCode(200);
        order.seen().body("heldUntil", nullValue()).body(of(GASKET) + "toCome", equalTo(1));
        assertThat(desk.runOut(order.number(), days(1_000))).isFalse();

        Orders.arrive(GASKET, 1)
                .statusCode(200)
                .body("left", equalTo(0))
                .body("putAside.order", contains((int) order.number()))
                .body("putAside.quantity", contains(1));
        order.seen().body("heldUntil", notNullValue());
        assertThat(desk.runOut(order.number(), days(13))).isFalse();
        assertThat(desk.runOut(order.number(), days(15))).isTrue();
    }

    @Test
    void whileAPartIsToComeNothingIsOfferedThatNeedsItAndItIsSaidWhenItIsExpected() {
        Orders order = waiting();
        int lead = given().get("/api/stock/" + BOX).path("leadDays");
        String expected = LocalDate.now(clock).plusDays(lead).toString();

        seenBothWays(order, contains("did not clean up", "withdraw"));
        order.seen().body(of(BOX) + "expectedOn", equalTo(expected));
        order.does("confirm", Orders.PISTON_IN_HAND)
                .statusCode(409)
                .body("type", equalTo("/problems/parts-to-come"))
                .body("detail", containsString("1 of " + BOX + ", expected by " + expected))
                .body("wayOut", containsString("Or withdraw"));
        order.does("quotes", "{}")
                .statusCode(409)
                .body("detail", containsString("Allowed now: did not clean up or withdraw."));

        Orders.arrive(BOX, 1).statusCode(200);
        seenBothWays(order, contains("confirm", "did not clean up", "withdraw"));
        order.seen().body(of(BOX) + "expectedOn", nullValue());
    }

    /** Alone and in a list. */
    private static void seenBothWays(Orders order, Matcher<?> next) {
        order.seen().body("next", next);
        given().queryParam("after", order.number() - 1)
                .queryParam("limit", 1)
                .get("/api/orders")
                .then()
                .body("orders[0].number", equalTo((int) order.number()))
                .body("orders[0].next", next);
    }

    @Test
    void whatDidNotCleanUpAfterItWasConfirmedIsHeldForTheNextQuoteButNotForEver() {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200).body("acceptedQuote", equalTo(1));
        order.does("did-not-clean-up", WORN_MORE)
                .statusCode(200)
                .body(of(BOX) + "putAside", equalTo(1))
                .body("heldUntil", notNullValue());
        order.does("quotes", "{}").statusCode(201);
        int left = Orders.left(BOX);

        assertThat(desk.runOut(order.number(), days(13))).isFalse();
        assertThat(desk.runOut(order.number(), days(15))).isTrue();

        order.seen().body("state", equalTo("quoted")).body("held", empty()).body("heldUntil", nullValue());
        assertThat(Orders.left(BOX)).isEqualTo(left + 1);
    }

    /** What was confirmed was another job: the second yes has its time like the first, until its own pistons are confirmed. */
    @Test
    void afterASecondYesTheTimeRunsAnewUntilItsPistonsAreConfirmed() {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("did-not-clean-up", WORN_MORE).statusCode(200);
        order.does("quotes", "{}").statusCode(201).body("offer.size", equalTo("+0.75"));
        order.does("accept", "{\"quote\":2,\"mayWait\":true}").statusCode(200).body("state", equalTo("accepted"));
        order.receivesAll();

        order.seen().body("acceptedQuote", equalTo(2)).body("heldUntil", notNullValue());
        order.does("finish", Orders.HONED).statusCode(409).body("type", equalTo("/problems/move-not-allowed"));
        order.does("confirm", Orders.PISTON_IN_HAND)
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"))
                .body("errors[0].limit", equalTo("+0.75"));
        assertThat(desk.runOut(order.number(), days(13))).isFalse();
        order.does(
                        "confirm",
                        Orders.PISTON_IN_HAND
                                .replace("+0.50", "+0.75")
                                .replace("NH-H131-050", "NH-H131-075")
                                .replace("54.093", "54.343")
                                .replace("53.720", "53.900"))
                .statusCode(200)
                .body("heldUntil", nullValue());

        assertThat(desk.runOut(order.number(), days(1_000))).isFalse();
        order.seen().body("state", equalTo("confirmed"));
    }

    @Test
    void aSecondYesThatIsNotConfirmedInTimeRunsOut() {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("did-not-clean-up", Orders.SINGLE_WORN).statusCode(200);
        order.does("quotes", "{}").statusCode(201);
        order.does("accept", "{\"quote\":2}").statusCode(200);

        assertThat(desk.runOut(order.number(), days(15))).isTrue();

        order.seen().body("state", equalTo("quoted")).body("held", empty()).body("acceptedQuote", nullValue());
    }

    @ParameterizedTest
    @CsvSource({"withdraw", "decline", "run out", "did not clean up"})
    void aYesThatNoLongerStandsIsNotShown(String way) {
        Orders order = accepted();
        order.seen().body("acceptedQuote", equalTo(1));

        if (way.equals("did not clean up")) {
            order.does("did-not-clean-up", WORN_MORE).statusCode(200);
        } else {
            putBack(order, way);
        }

        order.seen().body("acceptedQuote", nullValue());
    }

    @Test
    void whoSurveysAnewWaitsNoLongerForWhatTheOldQuoteWanted() {
        Orders order = waiting();

        order.does("did-not-clean-up", WORN_MORE)
                .statusCode(200)
                .body("held.number", contains(GASKET, "HV131-SE"))
                .body("heldUntil", notNullValue());

        Orders.arrive(BOX, 1).body("left", equalTo(1)).body("putAside", empty());
    }

    /** Of the first more is said to be put aside than there is: it stays where it is, and the second goes back all the same. */
    @Test
    void oneThatCannotBePutBackKeepsNoOtherFromIt() {
        Orders broken = accepted();
        Orders whole = accepted();
        String count = "update reservations set put_aside = ?1 where order_number = ?2 and number = ?3";
        change(count, 1_000, broken.number(), BOX);
        for (Orders order : List.of(broken, whole)) {
            change("update orders set held_until = ?1 where number = ?2", days(-1), order.number());
        }

        await().atMost(Duration.ofSeconds(40))
                .until(() -> given().get("/api/orders/" + whole.number()).path("state"), "quoted"::equals);

        broken.seen().body("state", equalTo("accepted"));
        change(count, 1, broken.number(), BOX);
        assertThat(desk.runOut(broken.number(), days(0))).isTrue();
    }

    /**
     * Two kinds of orders that want the same gaskets, of everything a few: whoever gives up serves others that wait, which are moved at the
     * same moment. None may wait for the other for ever, and nobody for what lies free.
     */
    @Test
    void ofManyWhoWaitAndGiveUpNoTwoWaitForEachOther() throws Exception {
        List<Long> orders = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            Orders order = Orders.opened("parts alone", null);
            order.does("survey", i % 2 == 0 ? Orders.SINGLE_WORN : WORN_MORE).statusCode(200);
            order.does("quotes", "{}").statusCode(201);
            orders.add(order.number());
        }
        for (String part : List.of(BOX, "NH-H131-075", "NH-H131-R075", "NH-H131-G", "NH-H131-C", "HV131-SE", GASKET)) {
            sellOut(part);
            Orders.arrive(part, 2).statusCode(200);
        }

        List<Callable<Integer>> crowd = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            Random dice = new Random(i);
            crowd.add(() -> moved(orders, dice));
        }
        assertThat(atOnce(crowd)).allSatisfy(moved -> assertThat(moved).isPositive());

        assertThat(count("select count(*) from reservations r join stock s on s.number = r.number"
                        + " where r.to_come > 0 and s.on_hand > s.reserved"))
                .isZero();
        assertThat(count("select count(*) from stock s where s.reserved <>"
                        + " (select coalesce(sum(r.put_aside), 0) from reservations r where r.number = s.number)"))
                .isZero();
        for (long order : orders) {
            desk.withdraw(new Errand(order, version(order), "Ada"), "sold the boat");
        }
    }

    /** Says yes to what is quoted, and lets run out what is accepted. @return how often it was done */
    private int moved(List<Long> orders, Random dice) {
        int moved = 0;
        for (int i = 0; i < 40; i++) {
            long order = orders.get(dice.nextInt(orders.size()));
            try {
                if (!desk.runOut(order, days(15))) {
                    desk.accept(new Errand(order, version(order), "Ada"), 1, true);
                }
                moved++;
            } catch (RefusedException | PessimisticLockException meanwhile) {
                // Somebody else moved the order, or began to wait: the only two that there may be.
            }
        }
        return moved;
    }

    private int version(long order) {
        return (int) count("select version from orders where number = " + order);
    }

    private long count(String query) {
        return QuarkusTransaction.requiringNew()
                .call(() -> ((Number) tables.createNativeQuery(query).getSingleResult()).longValue());
    }

    private static <T> List<T> atOnce(List<Callable<T>> crowd) throws Exception {
        ExecutorService all = Executors.newFixedThreadPool(crowd.size());
        try {
            List<T> answers = new ArrayList<>();
            for (Future<T> one : all.invokeAll(crowd)) {
                answers.add(one.get());
            }
            return Collections.unmodifiableList(answers);
        } finally {
            all.shutdown();
        }
    }
}
