package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.util.List;
import org.borewright.api.order.print.PdfText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a quote may be given for all the same, and under which condition: a hole nobody measured, one sleeved before, pistons of the owner. */
@QuarkusTest
@TestProfile(OwnShop.class)
class ConditionalQuotesTest {

    private static final String HOLE = "{\"cylinder\":\"4\",\"diameter\":61.450}";

    private static final String WORN = """
            {"engine":"TORRESK-F4","unit":"mm","condition":"worn","temperature":20,"gauge":{"name":"BG-1"},
             "deckFlatness":0.01,"skimmedBefore":0,"presentSize":{"size":"standard","knownFrom":"record"},
             "cylinders":[{"cylinder":"1","diameter":61.450},{"cylinder":"2","diameter":61.440},
              {"cylinder":"3","diameter":61.445},""" + HOLE + "]}";

    private static final String HALF = "{\"size\":\"+0.50\"}";

    private static final String OWN = "{\"size\":\"+0.50\",\"ownPistons\":\"KELVARN-TF4\"}";

    private static final String SET = pistons("NORHEIM-TF4", "NH-TF4-050", "+0.50", 61.765, ",\"mass\":173");

    private static int tags;

    private static Orders surveyed(String survey) {
        Orders order = Orders.opened("TORRESK-F4", "rebuild", "CQ-" + ++tags);
        order.does("survey", survey).statusCode(200);
        return order;
    }

    /** An order whose quote was accepted, with all its parts on the shelf. */
    private static Orders accepted(String survey, String quote) {
        Orders order = surveyed(survey);
        accept(order, 1, quote);
        return order;
    }

    private static void accept(Orders order, int number, String quote) {
        order.does("quotes", quote).statusCode(201);
        order.does("accept", "{\"quote\":%d,\"mayWait\":true}".formatted(number))
                .statusCode(200);
        order.receivesAll();
    }

    private static String pistons(String design, String number, String size, double diameter, String mass) {
        String piston = "{\"tag\":\"%c\",\"number\":\"" + number + "\",\"diameter\":" + diameter + mass + "}";
        return """
                {"engine":"TORRESK-F4","unit":"mm","size":"%s","design":"%s","temperature":20,"pistonTemperature":20,
                 "gauge":{"name":"BG-1"},"pistons":[%s,%s,%s,%s]}""".formatted(
                        size,
                        design,
                        piston.formatted('A'),
                        piston.formatted('B'),
                        piston.formatted('C'),
                        piston.formatted('D'));
    }

    /** The barrel is away, or the hole was not reached: nothing is read in it, and whoever chooses a way is told so. */
    @Test
    void aHoleThatNobodyMeasuredIsACondition() {
        Orders order = surveyed(WORN.replace(",\"diameter\":61.450}]", "}]"));

        order.does("quotes", "{}").statusCode(409).body("type", equalTo("/problems/nothing-to-quote"));
        order.does("quotes", HALF)
                .statusCode(201)
                .body("offer.conditional", equalTo(true))
                .body("offer.conditions", hasItem("Cylinder 4 was not measured."))
                .body("offer.conditions[0]", startsWith("Not proven by the readings"));
        assertThat(given().accept("text/html").get("/orders/" + order.number()).asString())
                .contains(", conditional; its conditions:<ul", "<li>Cylinder 4 was not measured.</li>");
    }

    /** The wall left cannot be told without the outside of that sleeve, whichever size is chosen. */
    @ParameterizedTest
    @CsvSource({"+0.50", "+0.75"})
    void aHoleSleevedBeforeIsACondition(String size) {
        String sleeved = HOLE.replace("}", ",\"sleevedBefore\":true}");
        Orders order = surveyed(
                WORN.replace(HOLE, sleeved).replace("\"condition\"", "\"askedSize\":\"" + size + "\",\"condition\""));

        order.does("quotes", "{\"size\":\"" + size + "\"}")
                .statusCode(201)
                .body("offer.size", equalTo(size))
                .body("offer.conditional", equalTo(true))
                .body("offer.conditions", hasItem(containsString("wall")));
    }

    /** What the survey could not tell is not forgotten with the customer's yes: the wall may be too thin for the very cut. */
    @Test
    void aSleeveThatNobodyMeasuredIsMeasuredBeforeTheFirstCut() {
        String sleeved = WORN.replace(HOLE, HOLE.replace("}", ",\"sleevedBefore\":true}"));
        Orders order = accepted(sleeved, HALF);

        order.does("confirm", SET)
                .statusCode(409)
                .body("type", equalTo("/problems/bench-holds"))
                .body("detail", containsString("The survey of the order says: "))
                .body("errors[0].reason", containsString("wall"))
                .body("errors[0].wayOut", containsString("survey it anew as did not clean up"));
        order.does(
                        "did-not-clean-up",
                        sleeved.replace("\"sleevedBefore\":true", "\"sleevedBefore\":true,\"sleeveOutside\":68.0"))
                .statusCode(200);
        accept(order, 2, HALF);
        order.does("confirm", SET).statusCode(200).body("state", equalTo("confirmed"));
    }

    /** The barrel that was away is measured when it comes: with the confirmation, for the price stands as it was. */
    @Test
    void aHoleThatNobodyMeasuredIsMeasuredBeforeTheFirstCut() {
        Orders order = accepted(WORN.replace(",\"diameter\":61.450}]", "}]"), HALF);

        order.does("confirm", SET)
                .statusCode(409)
                .body("type", equalTo("/problems/bench-holds"))
                .body(
                        "errors[0].reason",
                        equalTo("The survey of the order says: Nothing was measured in a cylinder: cylinder 4."))
                .body("errors[0].wayOut", containsString("Send the cylinders as measured now with the confirmation"));
        order.does(
                        "confirm",
                        SET.replaceFirst(
                                "\\{",
                                "{\"cylinders\":[{\"cylinder\":\"1\",\"diameter\":61.450},"
                                        + "{\"cylinder\":\"2\",\"diameter\":61.440},{\"cylinder\":\"3\",\"diameter\":61.445},"
                                        + HOLE + "],"))
                .statusCode(200)
                .body("state", equalTo("confirmed"));
    }

    /** A deck that is out of flat stays so until somebody skims it, and whoever confirms need not remember it. */
    @Test
    void theDeckIsAsTheSurveyFoundItUntilItIsSkimmed() {
        Orders order = accepted(WORN.replace("\"deckFlatness\":0.01", "\"deckFlatness\":0.12"), HALF);

        order.does("confirm", SET).statusCode(409).body("detail", containsString("deck"));
        order.does("confirm", SET.replaceFirst("\\{", "{\"deckSkim\":0.15,"))
                .statusCode(200)
                .body("state", equalTo("confirmed"));
    }

    @Test
    void theOwnersPistonsStandOnTheQuoteAndAreNeitherPricedNorPutAside() {
        Orders order = surveyed(WORN);
        List<String> bought = List.of("KV-TF4-050");

        order.does("quotes", OWN)
                .statusCode(201)
                .body("says", startsWith("rebore to +0.50 with the owner's own pistons, "))
                .body("offer.ownPistons.design", equalTo("KELVARN-TF4"))
                .body("offer.ownPistons.covers.number", equalTo(bought))
                .body("offer.ownPistons.covers[0].quantity", equalTo(4))
                .body("offer.ownPistons.covers[0].cylinders", contains("1", "2", "3", "4"))
                .body("offer.parts.covers.flatten().part", not(hasItem("piston")))
                .body("offer.parts.covers.flatten().number", hasItem("KV-TF4-R050"))
                .body("offer.match.size.design", equalTo("KELVARN-TF4"))
                .body("offer.conditional", equalTo(true))
                .body("offer.conditions[0]", startsWith("The pistons are the owner's own (4 × KV-TF4-050): "));
        assertThat(paper(order))
                .contains("the owner's own pistons +0.50", "4 × piston KV-TF4-050", "not sold with this quote");
        order.does("accept", "{\"quote\":1,\"mayWait\":true}")
                .statusCode(200)
                .body("held.number", hasItem("KV-TF4-R050"))
                .body("held.number", everyItem(not(containsString("-050"))));
    }

    private static String paper(Orders order) {
        return PdfText.of(given().accept("application/pdf")
                        .get("/api/orders/" + order.number() + "/quotes/1")
                        .asByteArray())
                .whole();
    }

    @Test
    void theOwnersPistonsAreMeasuredAndWeighedBeforeTheyAreConfirmed() {
        Orders order = accepted(WORN, OWN);

        order.does("confirm", pistons("KELVARN-TF4", "KV-TF4-100", "+1.00", 62.225, ",\"mass\":160"))
                .statusCode(409)
                .body("type", equalTo("/problems/other-job"))
                .body("errors.find { it.pointer == '/size' }.limit", equalTo("+0.50"));
        order.does("confirm", pistons("NORHEIM-TF4", "NH-TF4-050", "+0.50", 61.765, ",\"mass\":173"))
                .statusCode(409)
                .body("errors.pointer", contains("/design"));
        order.does("confirm", pistons("KELVARN-TF4", "KV-TF4-050", "+0.50", 61.755, ""))
                .statusCode(409)
                .body("type", equalTo("/problems/bench-holds"))
                .body("detail", containsString("weighed before anything is bored: pistons A, B, C, D."))
                .body("errors.pointer", hasItem("/pistons"));
        order.does("confirm", pistons("KELVARN-TF4", "KV-TF4-050", "+0.50", 61.600, ",\"mass\":159"))
                .statusCode(409)
                .body("type", equalTo("/problems/bench-holds"));
        order.does("confirm", pistons("KELVARN-TF4", "KV-TF4-050", "+0.50", 61.755, ",\"mass\":159"))
                .statusCode(200)
                .body("state", equalTo("confirmed"));
    }

    /** A larger size than the holes ask for is the owner's wish, and costs metal: the answer that the quote stands on says how much. */
    @Test
    void largerPistonsOfTheOwnerAreQuotedAsAskedFor() {
        Orders order = surveyed(WORN);

        order.does("quotes", OWN.replace("+0.50", "+1.00"))
                .statusCode(201)
                .body("offer.size", equalTo("+1.00"))
                .body("offer.ownPistons.covers.number", contains("KV-TF4-100"))
                .body("offer.match.says", containsString("+0.50"))
                .body(
                        "offer.conditions[1]",
                        startsWith("+0.50 would serve the holes as they were measured: +1.00 takes more metal"));
    }

    @Test
    void pistonsTooSmallForTheHolesGetNoPrice() {
        surveyed(WORN)
                .does("quotes", OWN.replace("+0.50", "standard"))
                .statusCode(409)
                .body("type", equalTo("/problems/nothing-to-quote"));
    }

    /** Nobody is told to ask for one of the ways named where none is: a specialist is the way out. */
    @ParameterizedTest
    @CsvSource({"{}", "{\"way\":\"rebore\"}"})
    void aCrackedHoleIsReferredToASpecialistAndNoWayIsNamed(String asked) {
        surveyed(WORN.replace(HOLE, HOLE.replace("}", ",\"findings\":[{\"kind\":\"cracked\"}]}")))
                .does("quotes", asked)
                .statusCode(409)
                .body("type", equalTo("/problems/nothing-to-quote"))
                .body(
                        "detail",
                        endsWith("says \"refer to a specialist\". A cylinder is beyond machining: cylinder 4."
                                + " There is no way that a price can be named for."))
                .body("wayOut", equalTo("No kit: ask a specialist about a sleeve, or find another block."));
    }

    /** What holds has its way out, beside the ways that there are. */
    @Test
    void whereNoSizeIsProvenTheReadingThatIsWantingIsTheWayOut() {
        surveyed(WORN.replace(",\"diameter\":61.450}]", "}]"))
                .does("quotes", "{}")
                .statusCode(409)
                .body(
                        "detail",
                        containsString(
                                "cylinders 1, 2, 3. A price can be named for: rebore to +0.25, rebore to +0.50."))
                .body(
                        "wayOut",
                        equalTo(
                                "Measure it: three depths by two axes at the least."
                                        + " Probe how far the worn wall stands off the axis. Or ask for one of the ways named."));
    }

    @Test
    void whereNothingHoldsTheWaysThatThereAreAreTheWayOut() {
        surveyed(WORN)
                .does("quotes", "{\"way\":\"sleeve\"}")
                .statusCode(409)
                .body("detail", containsString("A price can be named for: "))
                .body("wayOut", equalTo("Ask for one of the ways named, or survey anew."));
    }

    @ParameterizedTest
    @CsvSource({
        "'{\"ownPistons\":\"KELVARN-TF4\"}', /size, missing-field",
        "'{\"ownPistons\":\"OTHERS-X1\",\"size\":\"+0.50\"}', /ownPistons, unknown-word",
        "'{\"ownPistons\":\"KELVARN-TF4\",\"size\":\"+0.25\"}', /ownPistons, unknown-size",
    })
    void pistonsThatCannotBeMatchedAreRefused(String asked, String place, String problem) {
        surveyed(WORN)
                .does("quotes", asked)
                .statusCode(422)
                .body("type", equalTo("/problems/" + problem))
                .body("errors.pointer", contains(place));
    }
}
