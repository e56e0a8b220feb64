package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Map;
import org.borewright.catalog.Withdrawal;
import org.borewright.catalog.store.Shelves;
import org.borewright.catalog.store.row.RevisionRow;
import org.borewright.catalog.store.row.WithdrawnRow;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The catalogue learns between the yes and the day the engine leaves that a part is made no more: the one in the shop goes in all the same. */
@QuarkusTest
@TestProfile(OwnShop.class)
class ReplacedMeanwhileTest {

    private static final Map<String, String> HONED = Map.ofEntries(
            entry("truth:/roomTemperature", "true"),
            entry("/cylinders/0/tag", "A"),
            entry("number:/cylinders/0/grid/depths/0", "10"),
            entry("number:/cylinders/0/grid/depths/1", "32"),
            entry("number:/cylinders/0/grid/depths/2", "55"),
            entry("/cylinders/0/grid/axes/0", "thrust"),
            entry("/cylinders/0/grid/axes/1", "pin"),
            entry("number:/cylinders/0/grid/readings/0/0", "54.150"),
            entry("number:/cylinders/0/grid/readings/0/1", "54.149"),
            entry("number:/cylinders/0/grid/readings/1/0", "54.151"),
            entry("number:/cylinders/0/grid/readings/1/1", "54.150"),
            entry("number:/cylinders/0/grid/readings/2/0", "54.152"),
            entry("number:/cylinders/0/grid/readings/2/1", "54.150"));

    private static int tags;

    private String revision = "";

    @Inject
    Shelves shelves;

    @AfterEach
    void supplyAllAgain() {
        QuarkusTransaction.requiringNew().run(() -> {
            WithdrawnRow.delete("note", "of the test");
            RevisionRow.latest().orElseThrow().fit = revision;
        });
        shelves.reload();
    }

    private void isMadeNoMore(String number) {
        isWithdrawn(number, Withdrawal.State.NEVER_MADE, null);
    }

    private void isWithdrawn(String number, Withdrawal.State state, @Nullable String by) {
        QuarkusTransaction.requiringNew().run(() -> {
            WithdrawnRow gone = new WithdrawnRow();
            gone.number = number;
            gone.state = state;
            gone.replacedBy = by;
            gone.note = "of the test";
            gone.persist();
            RevisionRow latest = RevisionRow.latest().orElseThrow();
            revision = latest.fit;
            latest.fit = revision + "-" + number;
        });
        shelves.reload();
    }

    private static ValidatableResponse match(String body) {
        return given().contentType("application/json")
                .body(body)
                .post("/api/match")
                .then()
                .statusCode(200);
    }

    /** A piston, its rings, its pin, its clips: without one of them nobody else is sold the size. */
    @ParameterizedTest
    @CsvSource({"NH-H131-050", "NH-H131-R050", "NH-H131-G", "NH-H131-C"})
    void aRebuildGoesOnWithThePartsThatWereSold(String gone) {
        Orders order = Orders.quoted("RM-" + ++tags);
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();

        isMadeNoMore(gone);

        JsonPath others = match(Orders.SINGLE_WORN).extract().jsonPath();
        assertThat(others.getString("verdict") + others.get("size.size")).isNotEqualTo("serves+0.50");
        assertThat(sheet(order, "confirm", "pair", Map.of())).contains("Ready: every hole has its measured piston");
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200).body("state", equalTo("confirmed"));
        assertThat(sheet(order, "finish", "judge", HONED)).contains("Pass");
        order.does("finish", Orders.HONED).statusCode(200).body("state", equalTo("finished"));
        boolean isOfEverySize = gone.equals("NH-H131-G") || gone.equals("NH-H131-C");
        given().get("/api/blocks/RM-" + tags)
                .then()
                .body("life.what", contains("surveyed", "finished"))
                .body("life[1].rebuildsLeft.byPistons", isOfEverySize ? equalTo(0) : greaterThan(0));
    }

    /** What a sheet of an order shows, nothing of it kept. */
    private static String sheet(Orders order, String name, String then, Map<String, String> readings) {
        return given().header("Accept", "text/html")
                .header("Sec-Fetch-Site", "same-origin")
                .contentType("application/x-www-form-urlencoded; charset=UTF-8")
                .formParams(
                        "key",
                        Orders.key(),
                        "version",
                        order.version(),
                        "by",
                        "Ada",
                        "then",
                        then,
                        "/engine",
                        "HALVERN-131",
                        "/unit",
                        "mm",
                        "/size",
                        "+0.50",
                        "number:/temperature",
                        "20",
                        "number:/pistonTemperature",
                        "20",
                        "/gauge/name",
                        "BG-1",
                        "/pistons/0/tag",
                        "A",
                        "/pistons/0/number",
                        "NH-H131-050",
                        "number:/pistons/0/diameter",
                        "54.093",
                        "number:/pistons/0/mass",
                        "148.9",
                        "/cylinders/0/cylinder",
                        "1")
                .formParams(readings)
                .post("/orders/" + order.number() + "/" + name)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    /** A pit came to light, and the hole comes clean at the size that lies aside for it all the same. */
    @ParameterizedTest
    @CsvSource({"NH-H131-050", "NH-H131-R050", "NH-H131-C"})
    void whatLiesAsideIsQuotedAgainWhereAHoleDidNotCleanUp(String gone) {
        Orders order = Orders.quoted("RM-" + ++tags);
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();

        isMadeNoMore(gone);

        order.does("did-not-clean-up", Orders.SINGLE_WORN).statusCode(200);
        order.does("quotes", "{}")
                .statusCode(201)
                .body("offer.size", equalTo("+0.50"))
                .body("offer.inPlaceOf", equalTo(1));
        order.does("accept", "{\"quote\":2}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200).body("state", equalTo("confirmed"));
        order.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
    }

    /** Two sets are made for the pistons of this single; the one that was sold is replaced by the other, and needs no name still. */
    @Test
    void theRingsThatWereSoldAreFittedThoughOthersTookTheirPlace() {
        Orders order = Orders.confirmedOfTwoRingSets("RM-" + ++tags);

        isWithdrawn("KV-BS34-R020F", Withdrawal.State.REPLACED, "KV-BS34-R020");

        order.does(
                        "finish",
                        Orders.HONED_OF_TWO_RING_SETS
                                .replace("\"ringSet\":\"%s\",", "")
                                .replace("\"roomTemperature\":", "\"ringsFiled\":true,\"roomTemperature\":"))
                .statusCode(200)
                .body("state", equalTo("finished"));
    }

    /** Old stock of a number that another took the place of: its own rings, pin and clips are asked of it. */
    @Test
    void theOwnersPistonsMayBeOfANumberThatIsMadeNoMore() {
        Orders order = Orders.opened("HALVERN-131", "rebuild", "RM-" + ++tags);
        order.does("survey", Orders.SINGLE_WORN).statusCode(200);

        isMadeNoMore("NH-H131-050");

        order.does("quotes", "{\"size\":\"+0.50\",\"ownPistons\":\"NORHEIM-H131\"}")
                .statusCode(201)
                .body("offer.ownPistons.covers.number", contains("NH-H131-050"));
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200).body("state", equalTo("confirmed"));
        order.does("finish", Orders.HONED).statusCode(200).body("state", equalTo("finished"));
    }

    @ParameterizedTest
    @CsvSource({"KV-DS1-R000", "KV-DS1-C"})
    void newRingsAloneGoInWithTheSetThatWasSold(String gone) {
        Orders order = Orders.opened("DRUMLACH-S1", "rebuild", "RM-" + ++tags);
        order.does("survey", RingsOnlyScenarioTest.SMOKES).statusCode(200);
        order.does("quotes", "{}").statusCode(201).body("offer.way", equalTo("rings only"));
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();

        isMadeNoMore(gone);

        match(RingsOnlyScenarioTest.SMOKES).body("ringsOnly.certainty", equalTo("possible"));
        order.does("confirm", RingsOnlyScenarioTest.SMOKES).statusCode(200).body("state", equalTo("confirmed"));
        order.does("finish", RingsOnlyScenarioTest.SMOKES).statusCode(200).body("state", equalTo("finished"));
    }
}
