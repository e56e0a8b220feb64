package org.borewright.page.bench;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.borewright.page.Form;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;

/** The pages of the bench over HTTP, as they are without script. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BenchPagesTest {

    private static int tags;

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
        assertThat(page).contains(says, ">53.720<");
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
        Map<String, String> form = survey();
        form.put("number:/cylinders/0/diameter", "53.720");
        form.put("by", "Ada");
        form.put("version", "1");
        form.put("key", UUID.randomUUID().toString());

        for (int i = 0; i < 2; i++) {
            posted("/orders/" + order + "/survey", form).then().statusCode(303);
        }
        assertThat(given().get("/api/orders/" + order).then().extract().<Integer>path("version"))
                .isEqualTo(2);
        assertThat(seen("/orders/" + order + "/survey").asString()).contains("value=\"53.720\"", "What it says");

        form.put("key", UUID.randomUUID().toString());
        Response late = posted("/orders/" + order + "/survey", form);
        assertThat(late.statusCode()).isEqualTo(412);
        assertThat(late.asString()).contains("value=\"53.720\"", "is at version 2 by now");
    }

    private static long opened() {
        return given().contentType(ContentType.JSON)
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .queryParam("by", "Ada")
                .body("{\"customer\":\"Tessaly Rowing Club\",\"engine\":\"HALVERN-131\",\"block\":\"BP-" + ++tags
                        + "\"}")
                .post("/api/orders")
                .then()
                .statusCode(201)
                .extract()
                .jsonPath()
                .getLong("number");
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
