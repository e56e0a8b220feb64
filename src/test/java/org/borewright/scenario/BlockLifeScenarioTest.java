package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is known of a block from all its orders. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BlockLifeScenarioTest {

    private static int tags;

    private final String tag = "BL-" + ++tags + "x";

    private static ValidatableResponse block(String tag) {
        return given().get("/api/blocks/" + tag).then();
    }

    /**
     * Standard, +0.25, +0.50, +0.75 and +1.00 are made for it, and finish at 53.643 + 0.25 n; 0.05 mm of that is the hone's. At 53.720 the bar
     * may still do at +0.25; from 53.850 on it may not, and one rebuild is worn away.
     */
    @ParameterizedTest
    @CsvSource({"53.720, 4", "53.900, 3", "54.050, 3", "54.120, 2", "54.400, 1", "54.640, 0"})
    void whatIsLeftIsCountedFromTheReadings(String diameter, int left) {
        Orders order = Orders.opened("rebuild", tag + diameter);
        order.does("survey", Orders.SINGLE_WORN.replace("53.720", diameter)).statusCode(200);

        block(tag + diameter)
                .statusCode(200)
                .body("life[0].size", equalTo("standard"))
                .body("life[0].rebuildsLeft.byMetal", equalTo(left))
                .body("life[0].rebuildsLeft.byPistons", equalTo(left));
    }

    /** The largest size that it is offered in is +1.00, and a new hole of that is 54.635 at the least. */
    @Test
    void theMetalLeftIsToldOfWhatWasFinishedAndNotOfWhatIsWorn() {
        List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
        Orders order = Orders.quoted(tag);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        order.does("finish", Orders.HONED).statusCode(200);

        block(tag)
                .body("life[0].metalLeft", nullValue())
                .body("life[1].largest.nm", equalTo(54_152_000))
                .body("life[1].metalLeft.size", equalTo("+1.00"))
                .body("life[1].metalLeft.onDiameter.nm", equalTo(54_635_000 - 54_152_000));
        order.does("release", "").statusCode(200);
    }

    @Test
    void findingsAndTheOccasionStandInTheLifeOfTheHole() {
        Orders order = Orders.quoted(tag);
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.does(
                        "did-not-clean-up",
                        Orders.SINGLE_WORN.replace(
                                "\"diameter\":53.720",
                                "\"diameter\":53.900,\"findings\":[{\"kind\":\"pitted\",\"depth\":0.05,\"height\":20},{\"kind\":\"cracked fin\"}]"))
                .statusCode(200);

        block(tag)
                .body("life.what", contains("surveyed", "did not clean up"))
                .body("life[0].says", equalTo("with gauge BG-1, at 20.0 °C"))
                .body(
                        "life[1].says",
                        equalTo(
                                "with gauge BG-1, at 20.0 °C; pitted, 0.050 mm deep, 20.000 mm below the deck; cracked fin"));
        order.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
    }

    /** A tag is stamped in one case and called out in any: it is one block, and bears the tag as it was first written. */
    @Test
    void aTagIsTheSameInWhateverCase() {
        Orders order = Orders.opened("rebuild", tag);
        String shouted = tag.toUpperCase(Locale.ROOT);
        assertThat(shouted).isNotEqualTo(tag);

        Orders.post("/api/orders", null, Orders.key(), """
                        {"customer":"Another","engine":"HALVERN-131","block":" %s "}""".formatted(shouted))
                .then()
                .statusCode(409)
                .body("type", equalTo("/problems/block-taken"))
                .body("detail", containsString("Block " + tag + " is in the shop for order " + order.number()));
        block(shouted).statusCode(200).body("block", equalTo(tag));
        given().queryParam("block", shouted)
                .get("/api/orders")
                .then()
                .body("orders.number", contains((int) order.number()))
                .body("orders.block", contains(tag));
        order.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);

        Orders again = Orders.opened("rebuild", shouted.toLowerCase(Locale.ROOT));
        again.seen().body("block", equalTo(tag));
    }
}
