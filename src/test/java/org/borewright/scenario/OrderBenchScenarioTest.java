package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bench and an order: a four that two makers have pistons of one size for, sold with those of Norheim. */
@QuarkusTest
@TestProfile(OwnShop.class)
class OrderBenchScenarioTest {

    static final String WORN = """
            {"engine":"TORRESK-F4","unit":"mm","condition":"worn","temperature":20,"gauge":{"name":"BG-1"},
             "deckFlatness":0.01,"skimmedBefore":0,"presentSize":{"size":"standard","knownFrom":"record"},
             "cylinders":[{"cylinder":"1","diameter":61.450},{"cylinder":"2","diameter":61.440},
              {"cylinder":"3","diameter":61.445},{"cylinder":"4","diameter":61.450}]}""";

    private static int tags;

    private static Orders accepted() {
        return accepted(Orders.opened("TORRESK-F4", "rebuild", "OB-" + ++tags));
    }

    private static Orders accepted(Orders order) {
        order.does("survey", WORN).statusCode(200);
        order.does("quotes", "{}")
                .statusCode(201)
                .body("offer.size", equalTo("+0.50"))
                .body("offer.match.size.design", equalTo("NORHEIM-TF4"));
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();
        return order;
    }

    private static Orders confirmed() {
        Orders order = accepted();
        order.does("confirm", pistons("NORHEIM-TF4", "NH-TF4-050", "ABCD", 61.765))
                .statusCode(200);
        return order;
    }

    /** An order that was just noted, up to the signature. */
    static void finish(Orders order) {
        accepted(order);
        order.does("confirm", pistons("NORHEIM-TF4", "NH-TF4-050", "ABCD", 61.765))
                .statusCode(200);
        order.does("finish", honed("ABCD")).statusCode(200).body("state", equalTo("finished"));
    }

    /** Pistons of one number and diameter, by their tags. */
    private static String pistons(String design, String number, String marked, double diameter) {
        return """
                {"engine":"TORRESK-F4","unit":"mm","size":"+0.50","design":"%s","temperature":20,"pistonTemperature":20,
                 "gauge":{"name":"BG-1"},"pistons":[%s],"cylinders":[{"cylinder":"1","diameter":61.450},
                 {"cylinder":"2","diameter":61.440},{"cylinder":"3","diameter":61.445},{"cylinder":"4","diameter":61.450}]}""".formatted(design, inHand(number, marked, diameter));
    }

    private static String inHand(String number, String marked, double diameter) {
        return marked.chars()
                .mapToObj(tag -> "{\"tag\":\"%c\",\"number\":\"%s\",\"diameter\":%.3f,\"mass\":173.0}"
                        .formatted((char) tag, number, diameter))
                .collect(Collectors.joining(","));
    }

    /** Honed with a target clearance, the pistons in the holes in the order of their tags. */
    private static String honed(String marked) {
        return honed(marked, 61.805);
    }

    private static String honed(String marked, double diameter) {
        String sorted = marked.chars().sorted().mapToObj(Character::toString).collect(Collectors.joining());
        String holes = IntStream.range(0, marked.length())
                .mapToObj(i ->
                        "{\"cylinder\":\"%d\",\"tag\":\"%c\",\"grid\":{\"depths\":[8,25,45],\"axes\":[\"thrust\",\"pin\"],"
                                        .formatted(i + 1, marked.charAt(i))
                                + "\"readings\":[[%1$.3f,%1$.3f],[%1$.3f,%2$.3f],[%2$.3f,%1$.3f]]}}"
                                        .formatted(diameter, diameter + 0.001 * (i + 1)))
                .collect(Collectors.joining(","));
        return """
                {"engine":"TORRESK-F4","unit":"mm","size":"+0.50","roomTemperature":true,"temperature":20,"pistonTemperature":20,
                 "gauge":{"name":"BG-1"},"pistons":[%s],"cylinders":[%s]}""".formatted(inHand("NH-TF4-050", sorted, 61.765), holes);
    }

    @Test
    void anotherMakersPistonsOfThatSizeConfirmNothing() {
        Orders order = accepted();

        order.does("confirm", pistons("KELVARN-TF4", "KV-TF4-050", "ABCD", 61.755))
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"))
                .body("errors.pointer", hasItems("/design", "/pistons"))
                .body("errors[0].value", equalTo("KELVARN-TF4"))
                .body("errors[0].limit", equalTo("NORHEIM-TF4"))
                .body("errors.find { it.pointer == '/pistons' }.limit", equalTo("NH-TF4-050"))
                .body("errors.wayOut", everyItem(containsString("quote anew")));

        order.seen().body("state", equalTo("accepted")).body("version", equalTo(order.version()));
    }

    /** The card of another job lay beside it: an engine of one hole where the order is of a four. */
    @ParameterizedTest
    @CsvSource({"confirm", "finish"})
    void theBodyOfAnotherEngineConfirmsNothing(String move) {
        Orders order = move.equals("confirm") ? accepted() : confirmed();

        order.does(move, move.equals("confirm") ? Orders.PISTON_IN_HAND : Orders.HONED)
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"))
                .body("errors[0].pointer", equalTo("/engine"))
                .body("errors[0].limit", equalTo("TORRESK-F4"));
    }

    /** Two sets of rings are made for the pistons of this single, and their gaps differ: the one that was sold is signed, not the other. */
    @Test
    void theRingsThatWereSoldRunOnThePistons() {
        Orders order = Orders.confirmedOfTwoRingSets("OB-" + ++tags);
        String honed = Orders.HONED_OF_TWO_RING_SETS;

        order.does("finish", honed.formatted("KV-BS34-R020"))
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"))
                .body("errors.pointer", contains("/ringSet"))
                .body("errors[0].limit", equalTo("KV-BS34-R020F"))
                .body("errors[0].wayOut", containsString("the rings that were sold"));
        order.does(
                        "finish",
                        honed.formatted("KV-BS34-R020F")
                                .replace("\"roomTemperature\":", "\"ringsFiled\":true,\"roomTemperature\":"))
                .statusCode(200)
                .body("state", equalTo("finished"));
    }

    /** The gap of a ring that is made to be filed is below the least in its hole: until somebody says that it was filed nothing is signed. */
    @Test
    void ringsThatAreToBeFiledAreNotSignedUnfiled() {
        Orders order = Orders.confirmedOfTwoRingSets("OB-" + ++tags);
        String honed = Orders.HONED_OF_TWO_RING_SETS.formatted("KV-BS34-R020F");

        order.does("finish", honed)
                .statusCode(200)
                .body("state", equalTo("confirmed"))
                .body("judgement.verdict", equalTo("hold"))
                .body("judgement.holds.reason", contains("rings not filed"))
                .body("judgement.holds[0].next", containsString("ringsFiled"));
        given().contentType("application/json")
                .body(honed)
                .post("/api/finish")
                .then()
                .body("judgement", equalTo("hold"))
                .body("holes[0].ringGaps.fileTo.least.value", everyItem(equalTo(0.2032f)))
                .body(
                        "holes[0].checks.findAll { it.outcome == 'out' }.check",
                        everyItem(equalTo("least ring gap of a ring to be filed")));
        order.does("finish", honed.replace("\"roomTemperature\":", "\"ringsFiled\":true,\"roomTemperature\":"))
                .statusCode(200)
                .body("state", equalTo("finished"));
    }

    /** Finished holes that want a piston of grade A and one of grade B: two of grade A would run as well, and are not what was sold. */
    @Test
    void noMoreOfANumberIsConfirmedThanWasSold() {
        String holes =
                "\"cylinders\":[{\"cylinder\":\"1\",\"diameter\":71.210},{\"cylinder\":\"2\",\"diameter\":71.228}]";
        Orders order = Orders.opened("TORRESK-P2", "rebuild", "OB-" + ++tags);
        order.does("survey", """
                {"engine":"TORRESK-P2","unit":"mm","condition":"finished","temperature":20,"gauge":{"name":"BG-1"},
                 "deckFlatness":0.01,"skimmedBefore":0,%s}""".formatted(holes)).statusCode(200);
        order.does("quotes", "{\"way\":\"pistons for finished holes\"}")
                .statusCode(201)
                .body("offer.parts.covers.flatten().number", hasItems("NH-TP2-000A", "NH-TP2-000B"));
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();

        order.does("confirm", """
                {"engine":"TORRESK-P2","unit":"mm","size":"standard","condition":"finished","temperature":20,"pistonTemperature":20,
                 "gauge":{"name":"BG-1"},%s,"pistons":[{"tag":"A","number":"NH-TP2-000A","diameter":71.160,"mass":268},
                 {"tag":"B","number":"NH-TP2-000A","diameter":71.164,"mass":268}]}""".formatted(holes))
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"))
                .body("errors.limit", contains("1 of NH-TP2-000A"))
                .body("errors.pointer", contains("/pistons"))
                .body("errors.wayOut", everyItem(containsString("which number each piston bears")));
    }

    /** The customer has a price before the second barrel arrives; nothing is confirmed before it did. */
    @Test
    void besideAFinishedHoleThatNobodyMeasuredTheOtherIsQuotedOnCondition() {
        String first = "{\"cylinder\":\"1\",\"diameter\":71.210}";
        String second = ",{\"cylinder\":\"2\"}]}";
        String asked =
                "{\"engine\":\"TORRESK-P2\",\"unit\":\"mm\",\"condition\":\"finished\",\"temperature\":20,\"gauge\":{\"name\":\"BG-1\"},"
                        + "\"deckFlatness\":0.01,\"skimmedBefore\":0,\"cylinders\":[";
        Orders order = Orders.opened("TORRESK-P2", "rebuild", "OB-" + ++tags);
        order.does("survey", asked + first + second).statusCode(200);

        order.does("quotes", "{}")
                .statusCode(201)
                .body("offer.way", equalTo("pistons for finished holes"))
                .body("offer.size", equalTo("standard"))
                .body("offer.match.verdict", equalTo("hold"))
                .body("offer.match.holds.reason", contains("not measured"))
                .body("offer.conditions", contains("Cylinder 2 was not measured."));
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        order.receivesAll();
        String pistons = asked.replace(
                        "\"deckFlatness\"", "\"size\":\"standard\",\"pistonTemperature\":20,\"deckFlatness\"")
                .replace(
                        "\"cylinders\"",
                        "\"pistons\":[{\"tag\":\"A\",\"number\":\"NH-TP2-000A\",\"diameter\":71.160,\"mass\":268},"
                                + "{\"tag\":\"B\",\"number\":\"NH-TP2-000A\",\"diameter\":71.160,\"mass\":268}],\"cylinders\"");
        order.does("confirm", pistons + first + second)
                .statusCode(409)
                .body("type", equalTo("/problems/bench-holds"))
                .body("detail", containsString("cylinder 2"));
        order.does("confirm", pistons + first + ",{\"cylinder\":\"2\",\"diameter\":71.212}]}")
                .statusCode(200)
                .body("state", equalTo("confirmed"));
    }

    @Test
    void whatIsConfirmedTellsTheJudgementAndItsPaper() {
        Orders order = accepted();

        JsonPath told = order.does("confirm", pistons("NORHEIM-TF4", "NH-TF4-050", "ABCD", 61.765))
                .statusCode(200)
                .body("judgement.verdict", equalTo("ready"))
                .body("judgement.holds", empty())
                .extract()
                .jsonPath();

        given().get("/api/orders/" + order.number() + "/papers/" + told.getLong("judgement.paper"))
                .then()
                .body("kind", equalTo("bench"))
                .body("says", equalTo(told.getString("judgement.says")));
        order.seen().body("judgement", nullValue());
    }

    @Test
    void withoutAPistonForEveryHoleNothingIsConfirmedAndTheHoleIsNamed() {
        Orders order = accepted();

        order.does("confirm", pistons("NORHEIM-TF4", "NH-TF4-050", "ABC", 61.765))
                .statusCode(409)
                .body("type", equalTo("/problems/bench-holds"))
                .body("detail", containsString("No measured piston yet for cylinder 4."))
                .body("errors[0].pointer", equalTo("/cylinders"))
                .body("errors[0].wayOut", containsString("Measure a piston for every hole"));
    }

    @ParameterizedTest
    @CsvSource({"BACD, 1 2, 'B (NH-TF4-050)'", "ABCE, 4, E (NH-TF4-050)"})
    void anEngineBuiltOtherwiseThanPairedIsNotJudged(String built, String holes, String piston) {
        Orders order = confirmed();

        order.does("finish", honed(built))
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"))
                .body(
                        "errors.reason",
                        equalTo(List.of(holes.split(" ")).stream()
                                .map(hole -> "The piston of cylinder " + hole + " differs.")
                                .toList()))
                .body("errors[0].value", equalTo(piston))
                .body("errors.wayOut", everyItem(containsString("confirm the pistons anew")));

        order.seen().body("state", equalTo("confirmed")).body("version", equalTo(order.version()));
    }

    /** One was dropped: its like out of the same box is confirmed with the others, and then the engine is built so. */
    @Test
    void pistonsConfirmedAnewMayBeBuiltSo() {
        Orders order = confirmed();

        order.does("confirm", pistons("NORHEIM-TF4", "NH-TF4-050", "ABCE", 61.765))
                .statusCode(200)
                .body("state", equalTo("confirmed"));
        order.does("finish", honed("ABCD")).statusCode(409);
        order.does("finish", honed("ABCE"))
                .statusCode(200)
                .body("state", equalTo("finished"))
                .body("judgement.verdict", equalTo("pass"));
    }

    private static Pattern once(String words) {
        String quoted = Pattern.quote(words);
        return Pattern.compile("(?!.*" + quoted + ".*" + quoted + ").*" + quoted + ".*");
    }

    /** The others were measured beside it, and stand in the life of the block as surveyed. */
    @Test
    void onlyTheHoleThatTheBarWasInDidNotCleanUp() {
        Orders order = confirmed();
        String block = order.seen().extract().jsonPath().getString("block");

        order.does(
                        "did-not-clean-up",
                        WORN.replace("\"2\",\"diameter\":61.440", "\"2\",\"diameter\":61.790,\"lastFinish\":61.755"))
                .statusCode(200);

        given().get("/api/blocks/" + block)
                .then()
                .body("life.findAll { it.what == 'did not clean up' }.cylinder", contains("2"))
                .body("life.findAll { it.what == 'surveyed' }.cylinder", contains("1", "2", "3", "4", "1", "3", "4"));
    }

    /** Nothing was bored yet: a finish that is told is that of the last visit. */
    @Test
    void beforeThePistonsAreConfirmedNoBarIsTold() {
        Orders order = accepted();
        String block = order.seen().extract().jsonPath().getString("block");

        order.does(
                        "did-not-clean-up",
                        WORN.replace("\"2\",\"diameter\":61.440", "\"2\",\"diameter\":61.440,\"lastFinish\":61.260"))
                .statusCode(200);

        given().get("/api/blocks/" + block)
                .then()
                .body("life.findAll { it.what == 'did not clean up' }.cylinder", contains("1", "2", "3", "4"));
    }

    @Test
    void aHeldFinishSaysWhyWhatToDoAndWhereAllOfItIsKept() {
        Orders order = confirmed();

        JsonPath told = order.does("finish", honed("ABCD", 61.780))
                .statusCode(200)
                .body("state", equalTo("confirmed"))
                .body("judgement.verdict", equalTo("hold"))
                .body("judgement.holds.reason", hasItem("check out"))
                .body("judgement.holds[0].cylinders", contains("1", "2", "3", "4"))
                .body("judgement.holds[0].says", containsString("least clearance"))
                .body("judgement.holds.next", everyItem(containsString(".")))
                .extract()
                .jsonPath();

        long paper = told.getLong("judgement.paper");
        given().get("/api/orders/" + order.number() + "/papers/" + paper)
                .then()
                .body("answer.judgement", equalTo("hold"))
                .body("says", equalTo(told.getString("judgement.says")));
        given().queryParam("order", order.number())
                .get("/api/journal")
                .then()
                .body("lines[-1].did", equalTo("judge"))
                .body("lines[-1].after", matchesPattern(once(told.getString("judgement.holds[0].says"))))
                .body("lines[-1].after", containsString(told.getString("judgement.holds[0].next")))
                .body("lines[-1].after", containsString("Paper " + paper + "."));
        order.does("finish", honed("ABCD")).statusCode(200).body("state", equalTo("finished"));
    }
}
