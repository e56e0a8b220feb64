package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.borewright.api.order.print.PdfText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole lives of orders over real HTTP, on the demo catalogue in a real database. */
@QuarkusTest
@TestProfile(OwnShop.class)
class OrderScenarioTest {

    private static final String BOX = "NH-H131-CB050";

    private static int tags;

    private final String tag = "OS-" + ++tags;

    /** One box of each kind for every test, however many those before it took. */
    @BeforeEach
    void theShelfIsFull() {
        List.of(BOX, "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
    }

    @Test
    void aRebuildGoesFromTheFirstCallToTheDayTheBlockLeaves() {
        Orders order = Orders.opened("rebuild", tag);
        order.seen().body("state", equalTo("received")).body("next", contains("survey", "withdraw"));

        order.does("survey", Orders.SINGLE_WORN).statusCode(200).body("state", equalTo("surveyed"));
        // 90.10 for parts by the price list; 20 % tax and 30 % deposit are this shop's.
        order.does("quotes", "{\"alternatives\":true}")
                .statusCode(201)
                .body("quote", equalTo(1))
                .body("offer.way", equalTo("rebore"))
                .body("offer.size", equalTo("+0.50"))
                .body("offer.conditions", empty())
                .body("offer.sum.parts.amount", equalTo(90.10f))
                .body("offer.sum.taxPercent", equalTo(20))
                .body("offer.match.verdict", equalTo("serves"))
                .body("offer.alternatives.way", hasItem("rings only"));
        order.does("accept", "{\"quote\":1}")
                .statusCode(200)
                .body("state", equalTo("accepted"))
                .body("held.number", contains("HV131-GK", "HV131-SE", BOX))
                .body("held.putAside", everyItem(equalTo(1)))
                .body("heldUntil", notNullValue());
        order.does("confirm", Orders.PISTON_IN_HAND)
                .statusCode(200)
                .body("state", equalTo("confirmed"))
                .body("heldUntil", nullValue());
        order.does("finish", Orders.HONED).statusCode(200).body("state", equalTo("finished"));
        order.does("release", "")
                .statusCode(200)
                .body("state", equalTo("released"))
                .body("held", empty())
                .body("next", empty());

        given().get("/api/blocks/" + tag)
                .then()
                .body("openOrder", nullValue())
                .body("life.what", contains("surveyed", "finished"))
                .body("life.size", contains("standard", "+0.50"))
                .body("life[1].smallest.nm", equalTo(54_149_000))
                .body("life[1].largest.nm", equalTo(54_152_000))
                .body("life[1].by", equalTo("Ada"))
                .body("life[1].says", equalTo("with gauge BG-1, at 20.0 °C"))
                .body("life[1].rebuildsLeft", notNullValue());
        given().get("/api/orders/" + order.number() + "/papers")
                .then()
                .body("kind", contains("survey", "bench", "finish"))
                .body("request", everyItem(nullValue()));
        given().queryParam("order", order.number())
                .get("/api/journal")
                .then()
                .body("lines.did", contains("receive", "survey", "quote", "accept", "confirm", "finish", "release"))
                .body("lines.by", everyItem(equalTo("Ada")))
                .body("lines[3].before", equalTo("quoted, version 3"))
                .body("lines[3].after", containsString(BOX + " × 1"));
        journalIsWhole();
    }

    @Test
    void partsAloneGoFromTheYesStraightOutOfTheDoor() {
        Orders order = Orders.opened("parts alone", null);
        order.does("survey", Orders.SINGLE_WORN);
        order.does("quotes", "{}")
                .statusCode(201)
                .body("offer.work", empty())
                .body("offer.sum.net.amount", equalTo(90.10f))
                .body("offer.sum.tax.amount", equalTo(18.02f))
                .body("offer.sum.total.amount", equalTo(108.12f))
                .body("offer.sum.deposit.amount", equalTo(32.44f));
        order.does("accept", "{\"quote\":1}").statusCode(200);

        order.does("confirm", Orders.PISTON_IN_HAND)
                .statusCode(409)
                .body("type", equalTo("/problems/move-not-allowed"))
                .body("detail", containsString("no move of such an order"));
        order.does("release", "").statusCode(200).body("state", equalTo("released"));
    }

    @Test
    void whatIsHandedOutIsOffTheShelfAndWhatIsWithdrawnIsBack() {
        int before = Orders.left(BOX);
        Orders handedOut = accepted();
        Orders withdrawn = accepted();
        assertThat(Orders.left(BOX)).isEqualTo(before - 2);

        withdrawn
                .does("withdraw", "{\"reason\":\"sold the boat\"}")
                .statusCode(200)
                .body("held", empty());
        handedOut.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        handedOut.does("finish", Orders.HONED).statusCode(200);
        handedOut.does("release", "").statusCode(200);

        assertThat(Orders.left(BOX)).isEqualTo(before - 1);
    }

    /** Within a second, and here at once: a store asks memory, the desk the shelf itself. */
    @Test
    void aStoreIsToldOfWhatWasPutAside() {
        accepted();
        int left = Orders.left(BOX);

        await().until(() -> given().get("/api/parts/" + BOX).jsonPath().getInt("offer.onHand") == left);
        given().get("/api/parts/" + BOX).then().body("revision.offers", containsString("."));
    }

    private Orders accepted() {
        Orders order = Orders.quoted("OS-" + ++tags);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        return order;
    }

    @Test
    void theLastBoxGoesToOneAndTheOtherIsToldWhatIsLeft() {
        Orders first = Orders.quoted(tag);
        Orders second = Orders.quoted("OS-" + ++tags);
        takeAllBut(1);

        first.does("accept", "{\"quote\":1}").statusCode(200);
        second.does("accept", "{\"quote\":1}")
                .statusCode(409)
                .body("type", equalTo("/problems/stock-short"))
                .body("errors.part", contains(BOX))
                .body("errors[0].pointer", nullValue())
                .body("errors[0].limit", equalTo("0 left"))
                .body("errors[0].wayOut", containsString("mayWait"));

        second.seen().body("state", equalTo("quoted")).body("held", empty());
    }

    @Test
    void aCustomerWhoWaitsIsServedWhenTheBoxArrivesAndNotBefore() {
        Orders first = Orders.quoted(tag);
        takeAllBut(0);

        first.does("accept", "{\"quote\":1,\"mayWait\":true}")
                .statusCode(200)
                .body("held.number", hasItem(BOX))
                .body("held.find { it.number == '" + BOX + "' }.toCome", equalTo(1));
        first.does("confirm", Orders.PISTON_IN_HAND)
                .statusCode(409)
                .body("type", equalTo("/problems/parts-to-come"))
                .body("errors.part", contains(BOX));

        Orders.arrive(BOX, 1).body("left", equalTo(0));
        first.seen()
                .body("held.find { it.number == '" + BOX + "' }.putAside", equalTo(1))
                .body("version", equalTo(first.version() + 1));
        first.does("confirm", Orders.PISTON_IN_HAND).statusCode(412);
    }

    /** Orders for parts alone take the boxes that are left until so many are. */
    private static void takeAllBut(int left) {
        int here = Orders.left(BOX);
        for (int i = here; i > left; i--) {
            Orders order = Orders.opened("parts alone", null);
            order.does("survey", Orders.SINGLE_WORN);
            order.does("quotes", "{}").statusCode(201);
            List.of("HV131-SE", "HV131-GK").forEach(part -> Orders.arrive(part, 1));
            order.does("accept", "{\"quote\":1}").statusCode(200);
        }
    }

    @Test
    void aPistonOfTheWrongSizeConfirmsNothing() {
        Orders order = accepted();

        order.does("confirm", Orders.PISTON_IN_HAND.replace("54.093", "53.843"))
                .statusCode(409)
                .body("type", equalTo("/problems/bench-holds"))
                .body("detail", containsString("hold"));
        order.does("confirm", Orders.PISTON_IN_HAND.replace("+0.50", "+0.25").replace("-050", "-025"))
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"));

        order.seen().body("state", equalTo("accepted")).body("version", equalTo(order.version()));
    }

    @Test
    void aHoleHonedTooTightGoesBackToTheBenchWithTheReason() {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);

        order.does("finish", Orders.HONED.replace("54.15", "54.12").replace("54.14", "54.11"))
                .statusCode(200)
                .body("state", equalTo("confirmed"));

        given().queryParam("order", order.number())
                .get("/api/journal")
                .then()
                .body("lines.did", hasItem("judge"))
                .body("lines.find { it.did == 'judge' }.after", containsString("Hold"));
        order.does("finish", Orders.HONED).statusCode(200).body("state", equalTo("finished"));
    }

    /** Bored to +0.50 a patch stays: measured anew it wants +0.75, and only the customer's new yes changes the parts. */
    @Test
    void aHoleThatDidNotCleanUpIsQuotedAnewAndItsPartsSwapped() {
        Orders order = accepted();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        int boxes = Orders.left(BOX);

        order.does("did-not-clean-up", Orders.SINGLE_WORN.replace("53.720", "53.900"))
                .statusCode(200)
                .body("state", equalTo("surveyed"))
                .body("held.number", hasItem(BOX));
        order.does("quotes", "{}").statusCode(201).body("quote", equalTo(2)).body("offer.size", equalTo("+0.75"));
        order.does("accept", "{\"quote\":1}").statusCode(409).body("type", equalTo("/problems/quote-ran-out"));
        order.does("accept", "{\"quote\":2,\"mayWait\":true}")
                .statusCode(200)
                .body("held.number", hasItem("NH-H131-075"))
                .body("held.findAll { it.number == '" + BOX + "' }", empty());

        assertThat(Orders.left(BOX)).isEqualTo(boxes + 1);
        given().get("/api/orders/" + order.number() + "/quotes/1")
                .then()
                .body("offer.size", equalTo("+0.50"))
                .body("offer.sum.parts.amount", equalTo(90.10f));
    }

    /** Nobody else gets it: the order itself finds it on the shelf when it is surveyed and quoted anew, and no other order does. */
    @Test
    void whatIsPutAsideForAnOrderIsOnTheShelfForThatOrderAlone() {
        takeAllBut(1);
        Orders first = accepted();
        Orders second = Orders.quoted("OS-" + ++tags);

        first.does("did-not-clean-up", Orders.SINGLE_WORN).statusCode(200);
        paper(first, lastPaper(first))
                .body("answer.bill.lines.number", hasItem(BOX))
                .body("answer.bill.lines.availability", everyItem(equalTo("in stock")));
        first.does("quotes", "{}")
                .statusCode(201)
                .body("offer.parts.number", hasItem(BOX))
                .body("offer.parts.availability", everyItem(equalTo("in stock")))
                .body("offer.sum.parts.amount", equalTo(90.10f));
        second.does("quotes", "{}")
                .statusCode(201)
                .body("offer.parts.findAll { it.number == '" + BOX + "' && it.availability == 'in stock' }", empty());
        first.does("accept", "{\"quote\":2}")
                .statusCode(200)
                .body("held.find { it.number == '" + BOX + "' }.putAside", equalTo(1));

        assertThat(Orders.left(BOX)).isZero();
        journalIsWhole();
    }

    /** Whoever holds both papers must not add them. A second price for the same survey is another offer, and stands in place of none. */
    @Test
    void aQuoteAfterAHoleDidNotCleanUpSaysWhichOneItStandsInPlaceOf() {
        Orders order = Orders.quoted(tag);
        order.does("quotes", "{\"size\":\"+0.50\"}").statusCode(201).body("offer.inPlaceOf", nullValue());
        order.does("accept", "{\"quote\":2}").statusCode(200);
        order.does("did-not-clean-up", Orders.SINGLE_WORN.replace("53.720", "53.900"))
                .statusCode(200);

        order.does("quotes", "{}")
                .statusCode(201)
                .body("says", endsWith(", in place of quote 2"))
                .body("offer.inPlaceOf", equalTo(2))
                .body("offer.conditional", equalTo(false));

        assertThat(onPaper(order, 3)).contains("This quote stands in place of quote 2.");
        assertThat(onPaper(order, 2)).doesNotContain("in place of");
        given().accept("text/html")
                .get("/orders/" + order.number())
                .then()
                .body(containsString(", in place of quote 2</td>"));
        order.does("accept", "{\"quote\":3,\"mayWait\":true}").statusCode(200);
        order.does("did-not-clean-up", Orders.SINGLE_WORN.replace("53.720", "53.900"))
                .statusCode(200);
        order.does("quotes", "{}").statusCode(201).body("offer.inPlaceOf", equalTo(3));
        journalIsWhole();
    }

    private static String onPaper(Orders order, int quote) {
        return PdfText.of(given().accept("application/pdf")
                        .get("/api/orders/" + order.number() + "/quotes/" + quote)
                        .asByteArray())
                .whole();
    }

    private static int lastPaper(Orders order) {
        List<Integer> papers = given().get("/api/orders/" + order.number() + "/papers")
                .jsonPath()
                .getList("id");
        return papers.get(papers.size() - 1);
    }

    /** Signed at 54.149 … 54.152: the wear of the next visit is reckoned from 54.149, not from the smallest hole of the size. */
    @Test
    void theNextRebuildStartsFromWhatWasSigned() {
        Orders first = Orders.opened("rebuild", tag);
        first.does("survey", Orders.SINGLE_WORN);
        first.does("quotes", "{}").statusCode(201);
        first.does("accept", "{\"quote\":1}").statusCode(200);
        first.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        first.does("finish", Orders.HONED).statusCode(200);
        first.does("release", "").statusCode(200);

        Orders second = Orders.opened("rebuild", tag);
        String worn = Orders.SINGLE_WORN.replace("53.720", "54.200");
        second.does("survey", worn.replace("standard", "+0.50")).statusCode(200);
        second.does("survey", worn.replace("standard", "+0.50").replace("record", "crown stamp"))
                .statusCode(200);

        List<Integer> papers = given().get("/api/orders/" + second.number() + "/papers")
                .jsonPath()
                .getList("id");
        paper(second, papers.get(0))
                .body("answer.cylinders[0].whenNew.from", equalTo("recorded finish of the last visit"))
                .body("answer.cylinders[0].whenNew.diameter.nm", equalTo(54_149_000));
        paper(second, papers.get(1))
                .body("answer.cylinders[0].whenNew.from", equalTo("smallest hole of the present size"));
    }

    private static ValidatableResponse paper(Orders order, int id) {
        return given().get("/api/orders/" + order.number() + "/papers/" + id).then();
    }

    @Test
    void notesAreWrittenWhereverTheOrderStandsAndThoseBeforeStayInTheJournal() {
        Orders order = Orders.opened("parts alone", null);
        order.does("notes", "{\"notes\":\"leaks at the base\"}")
                .statusCode(200)
                .body("notes", equalTo("leaks at the base"));
        order.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        order.does("notes", "{\"notes\":\"came back\"}").statusCode(200).body("state", equalTo("withdrawn"));

        given().queryParam("order", order.number())
                .get("/api/journal")
                .then()
                .body("lines.did", contains("receive", "write notes", "withdraw", "write notes"))
                .body("lines[3].before", equalTo("withdrawn, version 3: leaks at the base"))
                .body("lines[3].after", equalTo("withdrawn, version 4: came back"));
    }

    /** An order may be noted without any, and come to have none again; a reason is always said. */
    @ParameterizedTest
    @ValueSource(strings = {"", "  \\n "})
    void notesCanBeTakenAwayAgain(String none) {
        Orders order = Orders.noted(Orders.post("/api/orders", null, Orders.key(), """
                {"kind":"parts alone","customer":"Another","engine":"HALVERN-131","notes":"%s"}""".formatted(none)));
        order.seen().body("notes", equalTo(""));
        order.does("notes", "{\"notes\":\"leaks at the base\"}").statusCode(200);

        order.does("notes", "{\"notes\":\"" + none + "\"}").statusCode(200).body("notes", equalTo(""));

        order.does("withdraw", "{\"reason\":\"" + none + "\"}").statusCode(422);
        order.does("notes", "{\"notes\":\"" + "x".repeat(1_501) + "\"}")
                .statusCode(422)
                .body("errors[0].limit", equalTo("at most 1500 characters"));
        given().queryParam("order", order.number())
                .get("/api/journal")
                .then()
                .body("lines.did", contains("receive", "write notes", "write notes"))
                .body("lines[2].before", equalTo("received, version 2: leaks at the base"))
                .body("lines[2].after", equalTo("received, version 3"));
        journalIsWhole();
    }

    @Test
    void aBlockIsInTheShopForOneOrderAtATime() {
        Orders first = Orders.opened("rebuild", tag);

        Orders.post("/api/orders", null, Orders.key(), """
                        {"customer":"Another","engine":"HALVERN-131","block":"%s"}""".formatted(tag))
                .then()
                .statusCode(409)
                .body("type", equalTo("/problems/block-taken"))
                .body("detail", containsString("order " + first.number()));
        first.does("withdraw", "{\"reason\":\"wrong tag\"}").statusCode(200);
        Orders.opened("rebuild", tag);
        Orders.post("/api/orders", null, Orders.key(), """
                        {"customer":"Another","engine":"OSTRAVEL-4","block":"%s"}""".formatted(tag))
                .then()
                .statusCode(409);
    }

    /** What is noted on an order that ended is no second end of it. */
    @Test
    void notesOnAnOrderThatEndedDoNotFreeTheBlockThatANewerOneHas() {
        Orders first = Orders.opened("rebuild", tag);
        first.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        Orders second = Orders.opened("rebuild", tag);

        first.does("notes", "{\"notes\":\"bought it back\"}").statusCode(200);

        given().get("/api/blocks/" + tag).then().body("openOrder", equalTo((int) second.number()));
        Orders.post("/api/orders", null, Orders.key(), """
                        {"customer":"Another","engine":"HALVERN-131","block":"%s"}""".formatted(tag))
                .then()
                .statusCode(409)
                .body("type", equalTo("/problems/block-taken"))
                .body("detail", containsString("order " + second.number()));
    }

    @Test
    void theSameRequestWithTheSameKeyIsDoneOnce() {
        Orders order = Orders.quoted(tag);
        String key = Orders.key();
        String path = "/api/orders/" + order.number() + "/accept";

        Response first = Orders.post(path, 3, key, "{\"quote\":1}");
        Response again = Orders.post(path, 3, key, "{\"quote\":1}");

        first.then().statusCode(200);
        again.then().statusCode(200);
        assertThat(again.asString()).isEqualTo(first.asString());
        assertThat(again.header("ETag")).isEqualTo("\"4\"");
        Orders.post(path, 3, key, "{\"quote\":1,\"mayWait\":true}")
                .then()
                .statusCode(422)
                .body("type", equalTo("/problems/key-used"));
        order.seen().body("version", equalTo(4)).body("held.putAside", everyItem(equalTo(1)));
    }

    @Test
    void whatWasRefusedMayBeSentAgainWithTheSameKey() {
        Orders order = Orders.quoted(tag);
        String key = Orders.key();

        order.does("accept", "{\"quote\":9}", key).statusCode(404).body("type", equalTo("/problems/unknown-quote"));
        order.does("accept", "{\"quote\":1}", key).statusCode(200);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "-          | 3 | Ada | 400 | key-missing",
                "short      | 3 | Ada | 400 | key-missing",
                "0123456789 | - | Ada | 428 | version-missing",
                "0123456789 | 2 | Ada | 412 | order-changed",
                "0123456789 | 3 | -   | 400 | bad-parameter",
            })
    void aChangeSaysWhoseItIsAndWhatItIsMeantFor(String key, String version, String by, int status, String problem) {
        Orders order = Orders.quoted("OS-" + ++tags);
        var request = given().contentType("application/json");
        if (key != null) {
            request.header("Idempotency-Key", key);
        }
        if (version != null) {
            request.header("If-Match", "\"" + version + "\"");
        }
        if (by != null) {
            request.queryParam("by", by);
        }

        request.body("{\"quote\":1}")
                .post("/api/orders/" + order.number() + "/accept")
                .then()
                .statusCode(status)
                .body("type", equalTo("/problems/" + problem));
        order.seen().body("state", equalTo("quoted"));
    }

    @Test
    void ofNothingMeasuredAPriceIsNamedOnlyForAWayThatSomebodyChose() {
        Orders order = Orders.opened("rebuild", tag);
        order.does("survey", """
                {"engine":"HALVERN-131","unit":"mm","condition":"worn","presentSize":{"size":"standard","knownFrom":"crown stamp"},
                 "cylinders":[{"cylinder":"1"}]}""").statusCode(200);

        order.does("quotes", "{}")
                .statusCode(409)
                .body("type", equalTo("/problems/nothing-to-quote"))
                .body("detail", containsString("rebore to +0.50"));
        order.does("quotes", "{\"way\":\"rebore\",\"size\":\"+0.50\"}")
                .statusCode(201)
                .body("offer.conditional", equalTo(true))
                .body("offer.conditions", hasItem("Cylinder 1 was not measured."));
    }

    @Test
    void aSurveyOfAnotherEngineIsNoneOfThisOrder() {
        Orders order = Orders.opened("rebuild", tag);

        order.does("survey", """
                {"engine":"MIRENDAL-P1","unit":"mm","condition":"worn","cylinders":[{"cylinder":"1"}]}""").statusCode(409).body("type", equalTo("/problems/other-job"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"999999", "0", "x", "99999999999999999999"})
    void whatIsNotThereIsNotFound(String number) {
        given().get("/api/orders/" + number).then().statusCode(404).body("type", equalTo("/problems/unknown-order"));
        Orders.post("/api/orders/" + number + "/release", 1, Orders.key(), "")
                .then()
                .statusCode(404);
    }

    /** Page by page, each order once, whatever comes in meanwhile. */
    @Test
    void ordersAreListedByWhatIsAskedOfThem() {
        String customer = "Customer of " + tag;
        for (int i = 0; i < 3; i++) {
            Orders.post("/api/orders", null, Orders.key(), """
                    {"kind":"parts alone","customer":"%s","engine":"HALVERN-131"}""".formatted(customer));
        }

        Response first =
                given().queryParam("customer", customer).queryParam("limit", 2).get("/api/orders");
        first.then().body("orders", hasSize(2)).body("after", notNullValue());
        given().queryParam("customer", customer)
                .queryParam("limit", 2)
                .queryParam("after", first.jsonPath().getLong("after"))
                .get("/api/orders")
                .then()
                .body("orders", hasSize(1))
                .body("after", nullValue());
        given().queryParam("customer", customer)
                .queryParam("state", "released")
                .get("/api/orders")
                .then()
                .body("orders", empty());
        given().queryParam("state", "lost")
                .queryParam("from", "yesterday")
                .get("/api/orders")
                .then()
                .statusCode(400)
                .body("errors.pointer", contains("state", "from"));
    }

    @Test
    void theJournalIsAFeedThatMissesNothing() {
        long after = endOfJournal();
        Orders order = Orders.opened("parts alone", null);
        order.does("survey", Orders.SINGLE_WORN);

        given().queryParam("after", after)
                .get("/api/journal")
                .then()
                .body("lines.position", contains((int) after + 1, (int) after + 2))
                .body("after", equalTo((int) after + 2));
        journalIsWhole();
    }

    /** The last line there is, read page by page as a store would. */
    private static long endOfJournal() {
        long after = 0;
        long page;
        do {
            page = after;
            after = given().queryParam("limit", 1000)
                    .queryParam("after", page)
                    .get("/api/journal")
                    .then()
                    .statusCode(200)
                    .extract()
                    .jsonPath()
                    .getLong("after");
        } while (after > page);
        return after;
    }

    private static void journalIsWhole() {
        given().get("/api/journal/verification")
                .then()
                .body("holds", equalTo(true))
                .body("broken", nullValue());
    }
}
