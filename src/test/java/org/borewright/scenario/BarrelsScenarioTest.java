package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Barrels are swapped between blocks: what was signed goes with the barrel. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BarrelsScenarioTest {

    private static final String RECORD = "recorded finish of the last visit";

    private static int visits;

    private final String sign = "BA-" + ++visits;

    /** An order of a four, with the barrel at each cylinder by the end of its tag. */
    private Response opened(String block, String... barrels) {
        return Orders.post("/api/orders", null, Orders.key(), """
                {"customer":"Tessaly Rowing Club","engine":"TORRESK-F4","block":"%s","barrels":[%s]}""".formatted(
                sign + block,
                IntStream.range(0, barrels.length)
                        .mapToObj(i -> "{\"cylinder\":\"%d\",\"tag\":\"%s\"}".formatted(i + 1, sign + barrels[i]))
                        .collect(Collectors.joining(","))));
    }

    /** All holes at the size signed, worn by some hundredths since. */
    private static ValidatableResponse surveyed(Orders order) {
        order.does(
                        "survey",
                        OrderBenchScenarioTest.WORN.replace("standard", "+0.50").replace("61.4", "61.8"))
                .statusCode(200);
        long paper = given().get("/api/orders/" + order.number() + "/papers")
                .jsonPath()
                .getLong("[-1].id");
        return given().get("/api/orders/" + order.number() + "/papers/" + paper).then();
    }

    private ValidatableResponse life(String tag) {
        return given().get("/api/blocks/" + sign + tag).then().statusCode(200);
    }

    /** Honed at 61.805; the second hole was read up to 61.807 and the others likewise, so that each is told from the next. */
    @Test
    void aBarrelTakesItsLifeIntoAnotherBlock() {
        Orders first = Orders.noted(opened("-X", "-a", "-b", "-c", "-d"));
        first.seen().body("barrels.tag", contains(sign + "-a", sign + "-b", sign + "-c", sign + "-d"));
        OrderBenchScenarioTest.finish(first);
        first.does("release", "").statusCode(200);

        Orders second = Orders.noted(opened("-Y", "-b", "-e", "-f", "-g"));
        surveyed(second)
                .body("answer.cylinders[0].cylinder", equalTo("1"))
                .body("answer.cylinders[0].whenNew.from", equalTo(RECORD))
                .body("answer.cylinders[0].whenNew.diameter.nm", equalTo(61_805_000))
                .body("answer.cylinders[1..3].whenNew.from", everyItem(not(RECORD)));

        life("-b")
                .body("life.block", contains(sign + "-X", sign + "-X", sign + "-Y"))
                .body("life.cylinder", contains("2", "2", "1"))
                .body("life.what", contains("surveyed", "finished", "surveyed"))
                .body("life[1].largest.nm", equalTo(61_807_000))
                .body("openOrder", equalTo((int) second.number()));
        life("-X").body("life.barrel.unique()", contains(sign + "-a", sign + "-b", sign + "-c", sign + "-d"));
        given().get("/api/orders?block=" + sign + "-B")
                .then()
                .body("orders.number", contains((int) first.number(), (int) second.number()));
        given().get("/api/orders?block=" + sign + "-E").then().body("orders.number", contains((int) second.number()));
        second.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        life("-b").body("openOrder", nullValue());
    }

    /** The block comes back and nobody says with which barrels: what was signed may be that of others. */
    @Test
    void whatWasSignedOfBarrelsIsNotThatOfTheirBlock() {
        Orders first = Orders.noted(opened("-X", "-a", "-b", "-c", "-d"));
        OrderBenchScenarioTest.finish(first);
        first.does("release", "").statusCode(200);

        Orders second = Orders.opened("TORRESK-F4", "rebuild", sign + "-X");
        second.seen().body("barrels", nullValue());
        surveyed(second).body("answer.cylinders.whenNew.from", everyItem(not(RECORD)));
        second.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
    }

    @Test
    void aBarrelIsInTheShopForOneOrderAndBelongsToOneEngine() {
        Orders first = Orders.noted(opened("-X", "-a", "-b", "-c", "-d"));

        opened("-Y", "-e", "-f", "-g", "-d")
                .then()
                .statusCode(409)
                .body("type", equalTo("/problems/block-taken"))
                .body(
                        "detail",
                        equalTo("Barrel " + sign + "-d is in the shop for order " + first.number()
                                + ", which has not ended."))
                .body("errors.pointer", contains("/barrels/3/tag"))
                .body("wayOut", equalTo("Finish or withdraw order " + first.number() + ", or compare the tag."));
        given().get("/api/blocks/" + sign + "-e").then().statusCode(404);
        first.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        Orders.post("/api/orders", null, Orders.key(), """
                        {"customer":"Another","engine":"HALVERN-131","block":"%s-S","barrels":[{"cylinder":"1","tag":"%s-d"}]}""".formatted(sign, sign))
                .then()
                .statusCode(409)
                .body("detail", equalTo("Barrel " + sign + "-d was tagged for engine TORRESK-F4."))
                .body("errors.pointer", contains("/barrels/0/tag"))
                .body("wayOut", containsString("needs a tag of its own"));
        opened("-Y", "-D", "-C", "-B", "-A")
                .then()
                .statusCode(201)
                .body("barrels.tag", contains(sign + "-d", sign + "-c", sign + "-b", sign + "-a"));
    }

    @Test
    void notesOnAnOrderThatEndedDoNotFreeTheBarrelsThatANewerOneHas() {
        Orders first = Orders.noted(opened("-X", "-a", "-b", "-c", "-d"));
        first.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        Orders second = Orders.noted(opened("-Y", "-b", "-e", "-f", "-g"));

        first.does("notes", "{\"notes\":\"bought it back\"}").statusCode(200);

        life("-b").body("openOrder", equalTo((int) second.number()));
        life("-a").body("openOrder", nullValue());
        opened("-Z", "-h", "-b", "-i", "-j")
                .then()
                .statusCode(409)
                .body("type", equalTo("/problems/block-taken"))
                .body("detail", containsString("order " + second.number()))
                .body("errors.pointer", contains("/barrels/1/tag"));
    }

    /** Else the life of a block and that of a barrel would be one. */
    @Test
    void aTagIsThatOfABlockOrOfABarrel() {
        Orders first = Orders.noted(opened("-X", "-a", "-b", "-c", "-d"));
        first.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);

        opened("-A", "-e", "-f", "-g", "-h")
                .then()
                .statusCode(409)
                .body("type", equalTo("/problems/block-taken"))
                .body("detail", equalTo(sign + "-a is the tag of a barrel."))
                .body("errors.pointer", contains("/block"))
                .body("wayOut", containsString("needs a tag of its own"));
        opened("-Y", "-e", "-f", "-x", "-h")
                .then()
                .statusCode(409)
                .body("detail", equalTo(sign + "-X is the tag of a block."))
                .body("errors.pointer", contains("/barrels/2/tag"));
        life("-a").body("kind", equalTo("barrel"));
        life("-X").body("kind", equalTo("block"));
    }

    /** Typed in another case and at other cylinders: whoever is first has all of them, and nobody waits in a ring. */
    @RepeatedTest(4)
    void ofTwoOrdersThatWantOneBarrelAtOnceOneGetsIt() throws Exception {
        for (String before : List.of("unknown", "known")) {
            List<Response> answers = Orders.atOnce(List.of(
                    () -> opened("-X", "-a", "-B", "-c", "-D"),
                    () -> opened("-Y", "-d", "-C", "-b", "-A"),
                    () -> opened("-Z", "-B", "-e", "-f", "-g"),
                    () -> opened("-V", "-h", "-b", "-i", "-a")));

            assertThat(answers.stream().map(Response::statusCode))
                    .as(before)
                    .containsExactlyInAnyOrder(201, 409, 409, 409);
            Orders winner = Orders.noted(answers.stream()
                    .filter(answer -> answer.statusCode() == 201)
                    .findFirst()
                    .orElseThrow());
            winner.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        }
    }

    /** Its holes are in one casting, or in a block. */
    @Test
    void anEngineWithoutSeparateBarrelsHasNoneToTag() {
        Orders.post("/api/orders", null, Orders.key(), """
                        {"customer":"Another","engine":"SELVARRE-3","block":"X-B","barrels":[{"cylinder":"1","tag":"X-1"}]}""")
                .then()
                .statusCode(422)
                .body("errors.pointer", contains("/barrels"))
                .body("errors[0].reason", containsString("no barrels that come off one by one"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "[] | /barrels",
                "{} | /barrels",
                "[{'cylinder':'1','tag':'X-1'},{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'}] | /barrels",
                "[{'cylinder':'1','tag':'X-1'},{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'},{'cylinder':'4','tag':'x-1'}] | /barrels/3/tag",
                "[{'cylinder':'1','tag':'x-b'},{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'},{'cylinder':'4','tag':'X-4'}] | /barrels/0/tag",
                "[{'cylinder':'1','tag':'X-1'},{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'},{'cylinder':'3','tag':'X-4'}] | /barrels/3/cylinder",
                "[{'cylinder':'1','tag':'X-1'},{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'},{'cylinder':'5','tag':'X-4'}] | /barrels/3/cylinder",
                "[{'cylinder':'1','tag':'X-1'},{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'},{'cylinder':'4'}] | /barrels/3/tag",
                "[{'cylinder':'1','tag':'X-1'},{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'},{'cylinder':'4','tag':'no tag'}] | /barrels/3/tag",
                "[7,{'cylinder':'2','tag':'X-2'},{'cylinder':'3','tag':'X-3'},{'cylinder':'4','tag':'X-4'}] | /barrels/0",
            })
    void eachBarrelHasATagOfItsOwn(String barrels, String pointer) {
        Orders.post("/api/orders", null, Orders.key(), """
                        {"customer":"Another","engine":"TORRESK-F4","block":"X-B","barrels":%s}""".formatted(barrels.replace('\'', '"')))
                .then()
                .statusCode(422)
                .body("errors.pointer", hasItem(pointer));
    }

    @Test
    void partsAloneHaveNoBarrels() {
        Orders.post("/api/orders", null, Orders.key(), """
                        {"kind":"parts alone","customer":"Another","engine":"HALVERN-131","barrels":[{"cylinder":"1","tag":"X-1"}]}""")
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/barrels"))
                .body("errors[0].reason", containsString("parts alone"));
    }
}
