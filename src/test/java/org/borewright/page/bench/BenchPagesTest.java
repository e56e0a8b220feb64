package org.borewright.page.bench;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.borewright.page.Form;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of the bench over HTTP, as they are without script. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BenchPagesTest {

    private static final Pattern FIELD = Pattern.compile("<input [^>]*>|<select.*?</select>", Pattern.DOTALL);
    private static final Pattern CHOSEN = Pattern.compile("<option value=\"([^\"]*)\" selected>");

    private static int tags;

    /** Scored nobody knows where: at 45 and 90 mm the wall is worn less, and there it would be cut out at a smaller size. */
    @Test
    void theHeightsAtWhichAFindingSettlesTheSizeAreToldAsLengths() {
        String sheet =
                "/engine=HALVERN-131&/unit=mm&/condition=worn&/presentSize/size=standard&/presentSize/knownFrom=record"
                        + "&number:/temperature=20&/cylinders/0/cylinder=1&/cylinders/0/findings/0/kind=scored"
                        + "&number:/cylinders/0/findings/0/depth=0.05&/cylinders/0/grid/axes/0=thrust&/cylinders/0/grid/axes/1=pin"
                        + "&number:/cylinders/0/grid/depths/0=10&number:/cylinders/0/grid/depths/1=45&number:/cylinders/0/grid/depths/2=80"
                        + "&number:/cylinders/0/grid/readings/0/0=53.700&number:/cylinders/0/grid/readings/0/1=53.690"
                        + "&number:/cylinders/0/grid/readings/1/0=53.650&number:/cylinders/0/grid/readings/1/1=53.648"
                        + "&number:/cylinders/0/grid/readings/2/0=53.650&number:/cylinders/0/grid/readings/2/1=53.648&then=send";
        assertThat(given().header("Accept", "text/html")
                        .contentType(Form.MEDIA_TYPE)
                        .body(sheet)
                        .post("/bench/survey")
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString())
                .contains(": 45.000, 80.000 mm")
                .doesNotContain("{value=");
    }

    @Test
    void aSurveyForNoOrderIsAnsweredAsTheApiAnswersIt() {
        Map<String, String> form = survey();
        form.put("number:/cylinders/0/diameter", "53.720");

        String page =
                posted("/bench/survey", form).then().statusCode(200).extract().asString();
        String says = given().contentType(ContentType.JSON)
                .body(
                        "{\"engine\":\"HALVERN-131\",\"unit\":\"mm\",\"condition\":\"worn\",\"temperature\":20,\"presentSize\":{\"size\":\"standard\","
                                + "\"knownFrom\":\"record\"},\"cylinders\":[{\"cylinder\":\"1\",\"diameter\":53.720}]}")
                .post("/api/match")
                .then()
                .statusCode(200)
                .extract()
                .path("says");
        assertThat(page)
                .contains(says, ">53.720<")
                .contains("it takes more than the largest reading to clean up, for wear may lie to one side");
    }

    @Test
    void aSlipStandsBesideItsCellWithWhatMayHaveBeenMeantAndNothingIsLost() {
        Map<String, String> form = survey();
        form.put("number:/cylinders/0/grid/depths/0", "10");
        form.put("/cylinders/0/grid/axes/0", "thrust");
        form.put("/cylinders/0/grid/axes/1", "pin");
        form.put("number:/cylinders/0/grid/readings/0/0", "5.372");
        form.put("number:/cylinders/0/grid/readings/0/1", "");

        Response answer = posted("/bench/survey", form);

        answer.then().statusCode(422);
        assertThat(answer.asString())
                .contains(
                        "value=\"5.372\"",
                        "Perhaps 53.72",
                        "Nothing is entered here.",
                        "or a dash where it cannot be measured");
    }

    /** Scored and cracked alike are noted on one sheet: a row more is asked for, and what is entered stays. */
    @Test
    void moreThanOneFindingOfAHoleIsNotedAtOnce() {
        Map<String, String> form = survey();
        form.put("number:/cylinders/0/diameter", "53.720");
        form.put("then", "finding");
        String grown =
                posted("/bench/survey", form).then().statusCode(200).extract().asString();
        assertThat(grown)
                .contains("<details open><summary>Seen in hole 1", "value=\"53.720\"", ">One finding more<")
                .contains("name=\"/cylinders/0/findings/1/kind\"")
                .doesNotContain("findings/2/kind");

        form.put("then", "send");
        form.put("/cylinders/0/findings/0/kind", "scored");
        form.put("/cylinders/0/findings/1/kind", "");
        form.put("/cylinders/0/findings/2/kind", "cracked");
        assertThat(posted("/bench/survey", form)
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString())
                .contains("cracked", "findings/3/kind");
    }

    /** A comma is typed where the keyboard has one; a form speaks of what is typed, and of no JSON. */
    @Test
    void aDecimalCommaIsRefusedInWordsOfAForm() {
        Map<String, String> form = survey();
        form.put("number:/cylinders/0/diameter", "53,720");

        Response answer = posted("/bench/survey", form);

        answer.then().statusCode(422);
        assertThat(answer.asString())
                .contains("value=\"53,720\"", "Type a plain number with a point before the decimals, such as 77.295.")
                .doesNotContain("without quotes");
    }

    @Test
    void theSheetOfAnUnknownEngineOrOrderIsNotFound() {
        assertThat(seen("/bench/survey?engine=NOBODY").statusCode()).isEqualTo(404);
        for (String page : new String[] {"survey", "did-not-clean-up", "confirm", "hone", "finish"}) {
            assertThat(seen("/orders/999999/" + page).statusCode()).as(page).isEqualTo(404);
        }
        assertThat(seen("/bench/survey").header("Location")).endsWith("/bench");
    }

    @Test
    void beforeThePistonsAreConfirmedTheHoneSheetSaysSoAndShowsNoFigure() {
        long order = opened();

        assertThat(seen("/orders/" + order + "/hone").asString())
                .contains("The pistons of this order are not confirmed.")
                .doesNotContain("Bore to");
        assertThat(seen("/orders/" + order + "/finish").asString()).contains("there are no honed holes to judge yet");
        assertThat(seen("/orders/" + order + "/confirm").asString())
                .contains("its pistons are not confirmed from there");
    }

    @Test
    void aSurveyIsKeptWithItsOrderOnceHoweverOftenItsFormIsSent() {
        long order = opened();
        Map<String, String> form = filledInFor(1);
        assertThat(seen("/orders/" + order + "/survey").asString())
                .contains("Keep the survey")
                .doesNotContain("Kept as");

        for (int i = 0; i < 2; i++) {
            posted("/orders/" + order + "/survey", form).then().statusCode(303);
        }
        assertThat(given().get("/api/orders/" + order).then().extract().<Integer>path("version"))
                .isEqualTo(2);
        assertThat(seen("/orders/" + order + "/survey").asString()).contains("value=\"53.720\"", "What it says");

        form.put("key", UUID.randomUUID().toString());
        Response late = posted("/orders/" + order + "/survey", form);
        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.asString())
                .contains("value=\"53.720\"", "is at version 2 by now")
                .contains("name=\"version\" value=\"2\"");
    }

    /** Who sent the sheet is told that it was kept, and where it goes on; the sheet stays for whoever measures once more. */
    @Test
    void theSurveyThatWasKeptSaysSoAndLeadsOnToTheQuote() {
        long order = opened();
        posted("/orders/" + order + "/survey", filledInFor(1)).then().statusCode(303);
        int paper = given().get("/api/orders/" + order + "/papers").path("[0].id");

        String page = seen("/orders/" + order + "/survey").asString();
        assertThat(page)
                .contains("Kept as the survey of <a href=\"/orders/" + order + "\">order " + order + "</a>.")
                .contains("Paper " + paper + ", by Ada, ")
                .contains("href=\"/orders/" + order + "#next\">Go on to the quote</a>")
                .contains("class=\"quiet\" data-end>Survey anew<")
                .doesNotContain("Keep the survey");
        assertThat(page.indexOf("Kept as")).isLessThan(page.indexOf("What it says"));
        assertThat(filledIn("/orders/" + order + "/survey").getOrDefault("by", ""))
                .as("whoever measures anew signs")
                .isEmpty();
        assertThat(seen("/orders/" + order).asString())
                .contains("<strong>Paper " + paper + "</strong>", "id=\"next\"")
                .doesNotContain("<ol class=\"papers\"");
        Map<String, String> anew = filledIn("/orders/" + order + "/survey");
        anew.put("by", "Ben");
        anew.put("then", "send");
        anew.put("version", "7");
        assertThat(posted("/orders/" + order + "/survey", anew).asString())
                .as("a sheet that was refused keeps what was typed")
                .contains("name=\"by\" type=\"text\" value=\"Ben\"");
        anew.put("version", "2");
        posted("/orders/" + order + "/survey", anew).then().statusCode(303);
        assertThat(given().get("/api/orders/" + order + "/papers").<List<?>>path("$"))
                .hasSize(2);
    }

    /** Whoever sends a sheet again after that has seen what changed: no reading is to be entered twice. */
    @Test
    void aSheetRefusedBecauseTheOrderMovedOnCanBeSentAgain() {
        long order = opened();
        Map<String, String> form = filledInFor(7);
        Response refused = posted("/orders/" + order + "/survey", form);

        assertThat(refused.statusCode()).isEqualTo(412);
        assertThat(refused.asString()).contains("name=\"version\" value=\"1\"");
        posted("/orders/" + order + "/survey", filledInFor(1)).then().statusCode(303);
    }

    @Test
    void theYesKeepsTheQuoteThatWasChosenWhereItIsRefused() {
        long order = quotedTwice();
        Map<String, String> form = new LinkedHashMap<>();
        form.put("number:/quote", "1");
        form.put("truth:/mayWait", "true");
        form.put("by", " ");
        form.put("version", "4");
        form.put("key", UUID.randomUUID().toString());

        assertThat(seen("/orders/" + order).asString()).contains("<option selected>2</option>");
        assertThat(posted("/orders/" + order + "/accept", form).asString())
                .contains("<option selected>1</option>", "<option>2</option>")
                .contains("name=\"truth:/mayWait\" value=\"true\" checked");
    }

    /** A blank name is no news of what somebody else did meanwhile: that is told when the form is sent with a name. */
    @Test
    void aFormRefusedForABlankNameStaysForTheOrderAsItWasKnown() {
        long order = quotedTwice();
        Map<String, String> form = new LinkedHashMap<>(Map.of("number:/quote", "1", "by", " ", "version", "4"));
        form.put("key", UUID.randomUUID().toString());
        sent("/api/orders/" + order + "/notes", 4, "{\"notes\":\"wants it black\"}")
                .then()
                .statusCode(200);

        Response refused = posted("/orders/" + order + "/accept", form);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.asString()).contains(version(4)).doesNotContain(version(5));

        form.put("by", "Ada");
        Response late = posted("/orders/" + order + "/accept", form);
        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.asString())
                .contains("is at version 5 by now", version(5))
                .doesNotContain(version(4));
    }

    /** Likewise of the sheets: each move with the order where it is allowed. */
    @Test
    void aSheetRefusedForABlankNameStaysForTheOrderAsItWasKnown() {
        for (String part : List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")) {
            while (Orders.left(part) == 0) {
                Orders.arrive(part, 1).statusCode(200);
            }
        }
        long order = opened();
        staysAsKnown(order, "survey", "send", 1);
        sent("/api/orders/" + order + "/survey", 2, Orders.SINGLE_WORN).then().statusCode(200);
        sent("/api/orders/" + order + "/quotes", 3, "{}").then().statusCode(201);
        sent("/api/orders/" + order + "/accept", 4, "{\"quote\":1}").then().statusCode(200);
        staysAsKnown(order, "confirm", "confirm", 5);
        staysAsKnown(order, "did-not-clean-up", "send", 6);
        sent("/api/orders/" + order + "/confirm", 7, Orders.PISTON_IN_HAND)
                .then()
                .statusCode(200);
        staysAsKnown(order, "finish", "sign", 8);
        // Others find their parts on this shelf.
        sent("/api/orders/" + order + "/withdraw", 9, "{\"reason\":\"called off\"}")
                .then()
                .statusCode(200);
    }

    /** Opened at a version, sent without a name when somebody had noted something, and again with one. */
    private static void staysAsKnown(long order, String move, String then, int version) {
        String path = "/orders/" + order + "/" + move;
        Map<String, String> form = filledIn(path);
        form.put("then", then);
        form.put("by", " ");
        sent("/api/orders/" + order + "/notes", version, "{\"notes\":\"wants it black\"}")
                .then()
                .statusCode(200);

        Response refused = posted(path, form);
        assertThat(refused.statusCode()).as(move).isEqualTo(422);
        assertThat(refused.asString()).as(move).contains(version(version)).doesNotContain(version(version + 1));

        form.put("by", "Ada");
        Response late = posted(path, form);
        assertThat(late.statusCode()).as(move).isEqualTo(412);
        assertThat(late.asString()).as(move).contains(version(version + 1)).doesNotContain(version(version));
    }

    private static String version(int version) {
        return "name=\"version\" value=\"" + version + "\"";
    }

    /** What the order has open stands beside the pairing, before anybody is refused: nothing is ready that could not be confirmed. */
    @Test
    void thePistonsOfTheOwnerAreQuotedOnThePageAndNotReadyBeforeTheyAreWeighed() {
        long order = opened();
        sent("/api/orders/" + order + "/survey", 1, SURVEY).then().statusCode(200);
        Map<String, String> quote = new LinkedHashMap<>();
        quote.put("/way", "");
        quote.put("by", "Ada");
        quote.put("version", "2");
        quote.put("key", UUID.randomUUID().toString());
        quote.put("/ownPistons", "NORHEIM-H13");
        assertThat(posted("/orders/" + order + "/quotes", quote)
                        .then()
                        .statusCode(422)
                        .extract()
                        .asString())
                .contains("<details open>", "value=\"NORHEIM-H13\"", "Perhaps NORHEIM-H131");
        quote.put("/ownPistons", "NORHEIM-H131");
        quote.put("/size", "+0.50");
        assertThat(seen("/orders/" + order).asString())
                .contains("name=\"/ownPistons\"", "<option value=\"+0.50\">", "<option value=\"hone only\">");
        posted("/orders/" + order + "/quotes", quote).then().statusCode(303);
        assertThat(seen("/orders/" + order).asString()).contains("with the owner&#39;s own pistons");
        sent("/api/orders/" + order + "/accept", 3, "{\"quote\":1,\"mayWait\":true}")
                .then()
                .statusCode(200);

        Map<String, String> pistons = filledIn("/orders/" + order + "/confirm");
        pistons.put("number:/pistons/0/diameter", "54.093");
        pistons.put("/pistons/0/number", "NH-H131-050");
        pistons.put("then", "pair");
        assertThat(posted("/orders/" + order + "/confirm", pistons)
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString())
                .contains(
                        "class=\"says hold\">Hold: The owner's own pistons are weighed before anything is bored: piston A."
                                        .replace("'", "&#39;")
                                + " Weigh every piston of the set, and type its mass.",
                        "value=\"confirm\" class=\"quiet\">Confirm<",
                        "value=\"pair\" data-end>Pair them<")
                .doesNotContain("class=\"says good\"", "Ready:");
        pistons.put("number:/pistons/0/mass", "148.9");
        pistons.put("/gauge/name", "BG-1");
        pistons.put("number:/pistonTemperature", "20");
        assertThat(posted("/orders/" + order + "/confirm", pistons)
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString())
                .contains(
                        "class=\"says good\"",
                        "value=\"confirm\">Confirm<",
                        "value=\"pair\" data-end class=\"quiet\">Pair them<")
                .doesNotContain("Hold:");
    }

    @Test
    void aBrowserThatWouldTakePaperTooIsShownThePage() {
        long order = quotedTwice();
        sent("/api/orders/" + order + "/accept", 4, "{\"quote\": 2, \"mayWait\": true}");

        for (String page : List.of("hone", "survey", "confirm", "finish", "did-not-clean-up")) {
            Response answer =
                    given().header("Accept", "application/pdf, text/html;q=0.9").get("/orders/" + order + "/" + page);
            assertThat(answer.statusCode()).as(page).isEqualTo(200);
            assertThat(answer.contentType()).startsWith("text/html");
        }
    }

    /** A browser asks whether it has the page of now already: no sheet is kept, and each is shown. */
    @Test
    void whatABrowserHasAlreadyIsShownAgain() {
        long order = quotedTwice();

        for (String page : List.of("hone", "survey", "confirm", "finish", "did-not-clean-up")) {
            for (String header : List.of("If-None-Match", "If-Match")) {
                given().header("Accept", "text/html")
                        .header(header, header.equals("If-Match") ? "\"1\"" : "*")
                        .get("/orders/" + order + "/" + page)
                        .then()
                        .statusCode(200);
            }
        }
    }

    private static long quotedTwice() {
        long order = opened();
        sent("/api/orders/" + order + "/survey", 1, SURVEY);
        sent("/api/orders/" + order + "/quotes", 2, "{}");
        sent("/api/orders/" + order + "/quotes", 3, "{}");
        return order;
    }

    private static final String SURVEY = """
            {"engine": "HALVERN-131", "unit": "mm", "condition": "worn", "temperature": 20, "deckFlatness": 0.01,
             "presentSize": {"size": "standard", "knownFrom": "record"}, "cylinders": [{"cylinder": "1", "diameter": 53.720}]}""";

    @Test
    void aReadingThatMayBeASlipIsAskedBackBesideItsCellAndMayStand() {
        Map<String, String> form = survey();
        String grid = "/cylinders/0/grid/";
        form.put("number:" + grid + "depths/0", "10");
        form.put("number:" + grid + "depths/1", "30");
        form.put("number:" + grid + "depths/2", "55");
        form.put(grid + "axes/0", "thrust");
        form.put(grid + "axes/1", "pin");
        String[] readings = {"53.720", "53.715", "53.710", "53.950", "53.705", "53.700"};
        for (int i = 0; i < readings.length; i++) {
            form.put("number:" + grid + "readings/" + i / 2 + "/" + i % 2, readings[i]);
        }

        assertThat(posted("/bench/survey", form)
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString())
                .contains(
                        "Read it again.",
                        "far from every reading beside it",
                        "value=\"53.950\"",
                        "Read again, and they stand");
        form.put("truth:/cylinders/0/readingsChecked", "true");
        assertThat(posted("/bench/survey", form)
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString())
                .doesNotContain("Read it again.")
                .contains("value=\"true\" checked");
    }

    @Test
    void aSheetThatIsSentAgainAsItStandsAsksTheSameWhoeverAskedItFirst() {
        String survey = """
                {"engine":"HALVERN-131","unit":"mm","condition":"worn","temperature":20,"date":"2026-03-02",
                 "gauge":{"name":"Old Bess","uncertainty":0.004,"repeatability":0.001,"ring":{"size":53.5,"temperature":24,"expansion":11}},
                 "presentSize":{"size":"standard","knownFrom":"record"},"deckFlatness":0.01,"deckFlatnessUncertainty":0.002,
                 "cylinders":[{"cylinder":"1","grid":{"depths":[10,30],"axes":["thrust","pin",45],
                  "readings":[[53.720,53.715,53.71],[53.710,null,53.7]]},"wallReach":{"radius":26.87,"fromBarAxis":true},
                  "findings":[{"kind":"scored","depth":0.01}],"ridge":"off",
                  "presentPiston":{"design":"NORHEIM-H131","diameter":53.55,"gauge":{"name":"MIC-1"}}}]}""";
        long order = opened();
        sent("/api/orders/" + order + "/survey", 1, survey).then().statusCode(200);

        Map<String, String> form = filledIn("/orders/" + order + "/survey");
        form.put("by", "Ada");
        posted("/orders/" + order + "/survey", form).then().statusCode(303);

        assertThat(request(order, 1))
                .isEqualTo(new JsonPath(survey.replace("\"date\":\"2026-03-02\",", "")).getMap("$"));
    }

    @Test
    void newRingsAloneAreConfirmedAndFinishedOnTheSurveySheet() {
        long order = opened("DRUMLACH-S1");
        sent("/api/orders/" + order + "/survey", 1, """
                {"engine":"DRUMLACH-S1","unit":"mm","condition":"worn","temperature":20,"deckFlatness":0.01,"skimmedBefore":0,
                 "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[{"cylinder":"1",
                 "lastFinish":88.210,
                 "grid":{"depths":[20,75,130],"axes":["thrust","pin"],"readings":[[88.262,88.250],[88.251,88.242],[88.238,88.233]]},
                 "presentPiston":{"number":"KV-DS1-000","diameter":88.112},"grooves":"good","ridge":"off","glaze":"broken"}]}""").then().statusCode(200);
        sent("/api/orders/" + order + "/quotes", 2, "{\"way\":\"rings only\"}")
                .then()
                .statusCode(201);
        sent("/api/orders/" + order + "/accept", 3, "{\"quote\":1}").then().statusCode(200);

        for (String move : List.of("confirm", "finish")) {
            assertThat(seen("/orders/" + order + "/" + move).asString()).contains("New rings, before");
            assertThat(seen("/orders/" + order + "/hone").asString()).doesNotContain("finished and signed");
            Map<String, String> form = filledIn("/orders/" + order + "/" + move);
            assertThat(form.containsKey("truth:/ringsFiled"))
                    .as("whether they are filed is asked as it leaves")
                    .isEqualTo(move.equals("finish"));
            form.put("by", "Ada");
            posted("/orders/" + order + "/" + move, form).then().statusCode(303);
            assertThat(filledIn("/orders/" + order + "/did-not-clean-up"))
                    .as("no bar was in it: that wall is still there")
                    .containsEntry("number:/cylinders/0/lastFinish", "88.210");
        }
        assertThat(given().get("/api/orders/" + order).then().extract().<String>path("state"))
                .isEqualTo("finished");
        assertThat(seen("/orders/" + order + "/hone").asString())
                .contains("The holes are finished and signed: nothing more is cut.");
    }

    @Test
    void whatDidNotCleanUpIsSurveyedAnewFromASheetOnWhichNothingIsRead() {
        long order = opened();
        sent(
                        "/api/orders/" + order + "/survey",
                        1,
                        "{\"engine\":\"HALVERN-131\",\"unit\":\"mm\",\"condition\":\"worn\",\"temperature\":20,"
                                + "\"deckFlatness\":0.01,\"skimmedBefore\":0,\"presentSize\":{\"size\":\"standard\",\"knownFrom\":\"record\"},"
                                + "\"cylinders\":[{\"cylinder\":\"1\",\"diameter\":53.720}]}")
                .then()
                .statusCode(200);
        sent("/api/orders/" + order + "/quotes", 2, "{}").then().statusCode(201);
        sent("/api/orders/" + order + "/accept", 3, "{\"quote\":1,\"mayWait\":true}")
                .then()
                .statusCode(200);
        assertThat(seen("/orders/" + order + "/survey").asString())
                .contains("it is not surveyed anew from here", "53.720", "Kept as the survey of")
                .doesNotContain("Go on to the quote");

        Map<String, String> form = filledIn("/orders/" + order + "/did-not-clean-up");
        assertThat(form).containsEntry("number:/cylinders/0/diameter", "");
        assertThat(form)
                .as("a block is warm from the bar, and not as warm as it was surveyed")
                .containsEntry("number:/temperature", "");
        form.put("number:/cylinders/0/diameter", "53.900");
        form.put("by", "Ada");
        posted("/orders/" + order + "/did-not-clean-up", form).then().statusCode(303);
        assertThat(given().get("/api/orders/" + order).then().extract().<String>path("state"))
                .isEqualTo("surveyed");
        assertThat(seen("/orders/" + order + "/survey").asString())
                .contains("Kept as the survey of", ">Go on to the quote</a>");
    }

    /** What the bar reached tells what is left of the wear, and stands where it is seen: with the figure of the bench card. */
    @Test
    void afterBoringTheSheetAsksWhatTheBarReached() {
        long order = confirmed();

        String page = seen("/orders/" + order + "/did-not-clean-up").asString();
        String hole = page.substring(page.indexOf("<legend>Hole 1</legend>"));
        assertThat(hole.substring(0, hole.indexOf("<details")))
                .contains("Bored to", "what the bar reached; empty where it was not bored")
                .contains("name=\"number:/cylinders/0/lastFinish\"");
        assertThat(hole).containsOnlyOnce("lastFinish\" name=").doesNotContain("Finish of the last visit");
        Map<String, String> form = filledIn("/orders/" + order + "/did-not-clean-up");
        assertThat(seen("/orders/" + order + "/card").asString())
                .contains("Bore</th><td class=\"large n\">" + form.get("number:/cylinders/0/lastFinish") + "</td>");

        form.put("number:/cylinders/0/diameter", "54.120");
        form.put("by", "Ada");
        posted("/orders/" + order + "/did-not-clean-up", form).then().statusCode(303);
        assertThat(request(order, 2).toString())
                .contains("lastFinish="
                        + form.get("number:/cylinders/0/lastFinish").replaceAll("0+$", ""));
        assertThat(seen("/orders/" + order + "/survey").asString()).contains("Finish of the last visit");
    }

    /** The service takes the size that was signed from its record; what the bar had reached is smaller by the hone stock. */
    @Test
    void whatTheBarReachedIsNoFinishOfAHoleThatWasSigned() {
        long order = confirmed(quotedAfterAVisit(), Orders.PISTON_IN_HAND);
        int version = given().get("/api/orders/" + order).path("version");
        sent("/api/orders/" + order + "/finish", version, Orders.HONED).then().statusCode(200);
        assertThat(given().get("/api/orders/" + order).<String>path("state")).isEqualTo("finished");

        String path = "/orders/" + order + "/did-not-clean-up";
        assertThat(seen(path).asString())
                .contains("Finish of the last visit")
                .doesNotContain("Bored to", "what the bar reached");
        assertThat(filledIn(path)).containsEntry("number:/cylinders/0/lastFinish", "");
    }

    /** A hole that goes without the bar was bored to nothing, whatever the survey knew of its last visit. */
    @Test
    void whereTheBarDoesNotGoNoFormerFinishStandsAsBored() {
        long order = confirmed(quotedAfterAVisit(), Orders.PISTON_IN_HAND.replace("53.720", "54.120"));
        String path = "/orders/" + order + "/did-not-clean-up";
        assertThat(seen("/orders/" + order + "/card").asString()).doesNotContain(">Bore</th>");

        assertThat(seen(path).asString()).contains("Bored to", "empty where it was not bored");
        assertThat(filledIn(path)).containsEntry("number:/cylinders/0/lastFinish", "");
    }

    /** Surveyed with what its hole was finished to the last time, and worn far enough from there for the piston in hand. */
    private static Orders quotedAfterAVisit() {
        Orders order = Orders.opened("rebuild", "SH-" + ++tags);
        order.does("survey", Orders.SINGLE_WORN.replace("53.720", "53.820,\"lastFinish\":53.655"))
                .statusCode(200);
        order.does("quotes", "{}").statusCode(201);
        return order;
    }

    private static long confirmed() {
        return confirmed(Orders.quoted("SH-" + ++tags), Orders.PISTON_IN_HAND);
    }

    private static long confirmed(Orders order, String pistons) {
        List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 3).statusCode(200));
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", pistons).statusCode(200);
        return order.number();
    }

    /** 68 taken for degrees Celsius moves a hole by hundredths of a mm: whoever reads a thermometer sees the scale that the survey was in. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"C, °C, 20", "F, °F, 68"})
    void theScaleStandsBesideEveryTemperatureThatIsAskedFor(String scale, String shown, String warm) {
        String in = "\"temperatureUnit\":\"" + scale + "\",";
        Orders order = Orders.opened("rebuild", "SH-" + ++tags);
        order.does("survey", said(Orders.SINGLE_WORN, in, warm)).statusCode(200);
        order.does("quotes", "{}").statusCode(201);
        List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 3).statusCode(200));
        order.does("accept", "{\"quote\":1}").statusCode(200);
        assertThat(seen("/orders/" + order.number() + "/confirm").asString())
                .contains(
                        "Temperature of the pistons <span class=\"unit\">" + shown + "</span>",
                        "Temperature of the block then <span class=\"unit\">" + shown + "</span>");
        order.does("confirm", said(Orders.PISTON_IN_HAND, in, warm)).statusCode(200);
        assertThat(seen("/orders/" + order.number() + "/finish").asString())
                .contains("Temperature of the block <span class=\"unit\">" + shown + "</span>");
    }

    /** A body in another scale. */
    private static String said(String body, String scale, String warm) {
        return body.replaceFirst("\"unit\"", scale + "\"unit\"").replaceAll("emperature\":20", "emperature\":" + warm);
    }

    /** Whoever opens the page too early is told what is awaited, and not that no such order is ever confirmed. */
    @Test
    void whilePartsAreToComeThePageOfThePistonsNamesThem() {
        List<Orders> taken = new ArrayList<>();
        List<Map<String, Object>> toCome = List.of();
        while (toCome.isEmpty()) {
            Orders order = Orders.quoted("SH-" + ++tags);
            taken.add(order);
            order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
            toCome = given().get("/api/orders/" + order.number()).path("held.findAll { it.toCome > 0 }");
        }
        Orders waiting = taken.get(taken.size() - 1);
        String detail = waiting.does("confirm", Orders.PISTON_IN_HAND)
                .statusCode(409)
                .extract()
                .path("detail");

        assertThat(seen("/orders/" + waiting.number() + "/confirm").asString())
                .contains(detail + " Nothing is confirmed until they are here.", (String)
                        toCome.get(0).get("number"))
                .doesNotContain("not confirmed from there");
        // The one that waits goes first: what another gives back would come to it, and change it.
        for (int i = taken.size() - 1; i >= 0; i--) {
            taken.get(i).does("withdraw", "{\"reason\":\"a test\"}").statusCode(200);
        }
    }

    @Test
    void notesAreReadAndWrittenOnThePageOfTheOrder() {
        long order = opened();
        Map<String, String> form = new LinkedHashMap<>();
        form.put("text:/notes", "Smokes when warm.\r\nWas run <dry>.");
        form.put("by", "Ada");
        form.put("version", "1");
        form.put("key", UUID.randomUUID().toString());

        assertThat(seen("/orders/" + order).asString()).contains("None yet.", "<textarea id=\"text:/notes\"");
        posted("/orders/" + order + "/notes", form).then().statusCode(303);

        assertThat(given().get("/api/orders/" + order).<String>path("notes"))
                .isEqualTo("Smokes when warm.\nWas run <dry>.");
        assertThat(seen("/orders/" + order).asString())
                .contains("<p class=\"lines\">Smokes when warm.\nWas run &lt;dry&gt;.</p>");
        form.put("key", UUID.randomUUID().toString());
        form.put("text:/notes", "Smokes no more.");
        assertThat(posted("/orders/" + order + "/notes", form)
                        .then()
                        .statusCode(412)
                        .extract()
                        .asString())
                .contains("Smokes no more.</textarea>");
        form.put("key", UUID.randomUUID().toString());
        form.put("version", "2");
        form.put("text:/notes", "");
        posted("/orders/" + order + "/notes", form).then().statusCode(303);
        assertThat(given().get("/api/orders/" + order).<String>path("notes")).isEmpty();
    }

    @Test
    void notesThatAreEmptiedStayEmptiedWhereThatIsRefused() {
        long order = opened();
        sent("/api/orders/" + order + "/notes", 1, "{\"notes\":\"wants it black\"}")
                .then()
                .statusCode(200);
        assertThat(seen("/orders/" + order).asString())
                .containsPattern("<textarea id=\"text:/notes\"(?![^>]* required)[^>]*>\\s*wants it black</textarea>");
        Map<String, String> form = new LinkedHashMap<>();
        form.put("text:/notes", " ");
        form.put("by", "Ada");
        form.put("version", "1");
        form.put("key", UUID.randomUUID().toString());

        assertThat(posted("/orders/" + order + "/notes", form)
                        .then()
                        .statusCode(412)
                        .extract()
                        .asString())
                .doesNotContain("wants it black</textarea>");
    }

    /** It is asked only where rings are to be filed, and its answer is signed with the readings. */
    @Test
    void whoeverSignsIsAskedWhetherTheRingsAreFiled() {
        long plain = confirmed();
        assertThat(seen("/orders/" + plain + "/finish").asString()).doesNotContain("ringsFiled");
        Orders order = Orders.confirmedOfTwoRingSets("SH-FILED-" + ++tags);
        String path = "/orders/" + order.number() + "/finish";
        Map<String, String> form = honedOfTwoRingSets(path);
        assertThat(form).containsEntry("truth:/ringsFiled", "");

        assertThat(posted(path, form).then().statusCode(200).extract().asString())
                .contains("Hold: A ring must be filed for its hole", "<b>file to 0.204 to 0.")
                .contains("Try each ring square at the narrowest place of its hole")
                .contains("then say that it is done")
                .contains("value=\"judge\" data-end>Judge<", "value=\"sign\" class=\"quiet\">Judge and sign<")
                .doesNotContain("(ringsFiled)", "fileTo");
        form.put("truth:/ringsFiled", "true");
        assertThat(posted(path, form).then().statusCode(200).extract().asString())
                .contains("Pass: every hole is proven good")
                .contains("value=\"judge\" data-end class=\"quiet\">Judge<", "value=\"sign\">Judge and sign<");
        form.put("then", "sign");
        form.put("by", "Ada");
        posted(path, form).then().statusCode(303);
        assertThat(given().get("/api/orders/" + order.number()).<String>path("state"))
                .isEqualTo("finished");
        Map<String, String> anew = filledIn("/orders/" + order.number() + "/did-not-clean-up");
        assertThat(anew.getOrDefault("number:/cylinders/0/lastFinish", ""))
                .as("the record of the block knows what was signed")
                .isEmpty();
        assertThat(anew)
                .containsEntry("/presentSize/size", "+0.020 in")
                .containsEntry("/presentSize/knownFrom", "record");
    }

    /** Rings that are not the ones made to be filed are not asked about, until somebody says that it is those that are in. */
    @Test
    void whoeverSignsIsNotAskedOfRingsThatWereNotSold() {
        Orders order = Orders.confirmedOfTheOtherRingSet("SH-FILED-" + ++tags);
        String path = "/orders/" + order.number() + "/finish";
        Map<String, String> form = honedOfTwoRingSets(path);
        assertThat(form).containsEntry("/ringSet", "KV-BS34-R020").doesNotContainKey("truth:/ringsFiled");

        assertThat(posted(path, form).then().statusCode(200).extract().asString())
                .contains("Pass: every hole is proven good")
                .doesNotContain("ringsFiled");
        form.put("/ringSet", "KV-BS34-R020F");
        assertThat(posted(path, form).then().statusCode(200).extract().asString())
                .contains("then say that it is done", "name=\"truth:/ringsFiled\"");
    }

    /** A sheet with its readings, to be judged. */
    private static Map<String, String> honedOfTwoRingSets(String path) {
        Map<String, String> form = filledIn(path);
        form.put("number:/temperature", "20");
        form.put("/gauge/name", "BG-1");
        form.put("truth:/roomTemperature", "true");
        String grid = "/cylinders/0/grid/";
        List.of("15", "50", "85")
                .forEach(depth -> form.put("number:" + grid + "depths/" + (Integer.parseInt(depth) / 35), depth));
        form.put(grid + "axes/0", "thrust");
        form.put(grid + "axes/1", "pin");
        String[] readings = {"84.080", "84.080", "84.089", "84.088", "84.096", "84.096"};
        for (int i = 0; i < readings.length; i++) {
            form.put("number:" + grid + "readings/" + i / 2 + "/" + i % 2, readings[i]);
        }
        form.put("then", "judge");
        return form;
    }

    /** The fields of the form of a page, as a browser would send them if nobody typed anything. */
    private static Map<String, String> filledIn(String path) {
        String page = seen(path).asString();
        String form = page.substring(page.indexOf("<form method=\"post\""));
        Map<String, String> fields = new LinkedHashMap<>();
        FIELD.matcher(form).results().forEach(found -> {
            String tag = found.group();
            String value = tag.startsWith("<select")
                    ? CHOSEN.matcher(tag)
                            .results()
                            .map(chosen -> chosen.group(1))
                            .findFirst()
                            .orElse("")
                    : attribute(tag, "value");
            if (!tag.contains("type=\"checkbox\"") || tag.contains(" checked")) {
                fields.put(attribute(tag, "name"), value);
            }
        });
        return fields;
    }

    private static String attribute(String tag, String name) {
        Matcher found = Pattern.compile(" " + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? found.group(1) : "";
    }

    private static Map<String, Object> request(long order, int paper) {
        int id =
                given().get("/api/orders/" + order + "/papers").then().extract().path("[" + paper + "].id");
        return given().get("/api/orders/" + order + "/papers/" + id).jsonPath().getMap("request");
    }

    private static Response sent(String path, int version, String body) {
        return given().contentType(ContentType.JSON)
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .header("If-Match", "\"" + version + "\"")
                .queryParam("by", "Ada")
                .body(body)
                .post(path);
    }

    private static long opened() {
        return opened("HALVERN-131");
    }

    private static long opened(String engine) {
        return Orders.opened(engine, "rebuild", "SH-" + ++tags).number();
    }

    private static Map<String, String> survey() {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("/engine", "HALVERN-131");
        form.put("/unit", "mm");
        form.put("/condition", "worn");
        form.put("number:/temperature", "20");
        form.put("/presentSize/size", "standard");
        form.put("/presentSize/knownFrom", "record");
        form.put("/cylinders/0/cylinder", "1");
        form.put("then", "send");
        return form;
    }

    /** A sheet with its reading, for a version of its order. */
    private static Map<String, String> filledInFor(int version) {
        Map<String, String> form = survey();
        form.put("number:/cylinders/0/diameter", "53.720");
        form.put("by", "Ada");
        form.put("version", Integer.toString(version));
        form.put("key", UUID.randomUUID().toString());
        return form;
    }

    private static Response posted(String path, Map<String, String> form) {
        return given().redirects()
                .follow(false)
                .header("Accept", "text/html")
                .header("Sec-Fetch-Site", "same-origin")
                .contentType(Form.MEDIA_TYPE + "; charset=UTF-8")
                .formParams(form)
                .post(path);
    }

    private static Response seen(String path) {
        return given().redirects().follow(false).header("Accept", "text/html").get(path);
    }
}
