package org.borewright.page;

import static io.restassured.RestAssured.given;
import static io.restassured.config.EncoderConfig.encoderConfig;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.borewright.api.guard.Routes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of every page, whoever looks at it. */
@QuarkusTest
class EveryPageTest {

    private static final String A_BROWSER = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";
    private static final int HEAVIEST_BYTES = 100_000;
    private static final Pattern LOOK = Pattern.compile("(?:href|src)=\"(/look/[^\"]+)\"");

    @TestHTTPResource("/")
    URI service;

    @Inject
    Routes routes;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "/, 200",
        "/?words=ost, 200",
        "/?words=nothing+of+this+name, 200",
        "/nowhere, 404",
        "/?page=x, 400",
        "/desk/OSTRAVEL-4, 200",
        "/desk/OSTRAVEL-4?known=stamp, 200",
        "/desk/OSTRAVEL-4?known=survey, 200",
        "/desk/OSTRAVEL-4?known=something, 200",
        "/desk/OSTRAVEL-4/example, 200",
        "/desk/MIRENDAL-P1/example, 200",
        "/desk/NOBODY-1, 404",
        "/orders, 200",
        "/orders?state=received, 200",
        "/orders?state=asleep, 400",
        "/orders/999999, 404",
        "/orders/x, 404",
        "/shelf, 200",
        "/shelf?engine=OSTRAVEL-4, 200",
        "/blocks, 200",
        "/blocks/nobody, 404",
        "/orders/999999999999/card, 404",
        "/bench, 200",
        "/bench?words=ost, 200",
        "/bench/survey?engine=OSTRAVEL-6, 200",
        "/bench/survey?engine=NOBODY, 404"
    })
    void isLockedAgainstWhatComesFromElsewhere(String path, int status) {
        Response page = seen(path);
        assertThat(page.statusCode()).isEqualTo(status);
        assertThat(page.contentType()).isEqualTo("text/html;charset=UTF-8");
        assertThat(page.header("Content-Security-Policy")).isEqualTo(PageGuard.POLICY);
        assertThat(page.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(page.header("Referrer-Policy")).isEqualTo("same-origin");
        assertThat(page.header("Cache-Control")).isEqualTo("no-store");
        assertThat(page.asString()).doesNotContain("style=\"", "onclick", "http://", "https://");
    }

    @Test
    void isLightWithAllThatItLoads() {
        for (String path : List.of(
                "/",
                "/nowhere",
                "/desk/OSTRAVEL-6/example",
                "/desk/OSTRAVEL-6?known=survey",
                "/orders",
                "/bench",
                "/bench/survey?engine=OSTRAVEL-6",
                "/shelf",
                "/shelf?engine=OSTRAVEL-4",
                "/blocks")) {
            Response page = seen(path);
            int weight = page.asByteArray().length;
            for (String look : LOOK.matcher(page.asString())
                    .results()
                    .map(found -> found.group(1))
                    .toList()) {
                Response file = given().get(look);
                assertThat(file.statusCode()).as(look).isEqualTo(200);
                assertThat(file.header("Cache-Control")).as(look).contains("max-age");
                weight += file.asByteArray().length;
            }
            assertThat(weight).as(path).isLessThan(HEAVIEST_BYTES);
        }
    }

    /** As it goes over the line to a browser, which asks for it packed; the sheet of an engine with six holes has the most fields. */
    @Test
    void theLargestSheetIsLightOnTheWay() {
        Form sheet = new Form(Map.of("/engine", "OSTRAVEL-6", "then", "deeper"));
        for (int axis = 0; axis < 4; axis++) {
            sheet = sheet.with(
                    (axis < 2 ? "" : "number:") + "/cylinders/0/grid/axes/" + axis,
                    List.of("thrust", "pin", "45", "135").get(axis));
        }
        for (int depth = 0; depth < 4; depth++) {
            sheet = sheet.with("number:/cylinders/0/grid/depths/" + depth, "" + (10 + 20 * depth));
        }
        String form = sheet.fields().entrySet().stream()
                .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        String path = "/bench/survey";
        HttpRequest.Builder asked = HttpRequest.newBuilder(service.resolve(path))
                .header("Content-Type", Form.MEDIA_TYPE)
                .POST(HttpRequest.BodyPublishers.ofString(form));

        String page = new String(packed(asked, true), StandardCharsets.UTF_8);
        assertThat(page.split("name=\"number:/cylinders/[0-9]/grid/readings/", -1))
                .hasSize(6 * 5 * 4 + 1);
        int weight = packed(asked, false).length;
        for (MatchResult look : LOOK.matcher(page).results().toList()) {
            weight += packed(HttpRequest.newBuilder(service.resolve(look.group(1))), false).length;
        }
        assertThat(weight).isLessThan(HEAVIEST_BYTES);
    }

    /** An answer that was asked for packed, or what was in it. */
    private static byte[] packed(HttpRequest.Builder asked, boolean opened) {
        try {
            HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                    .send(asked.setHeader("Accept-Encoding", "gzip").build(), HttpResponse.BodyHandlers.ofByteArray());
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.headers().firstValue("Content-Encoding")).contains("gzip");
            return opened ? new GZIPInputStream(new ByteArrayInputStream(answer.body())).readAllBytes() : answer.body();
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(broken);
        }
    }

    @Test
    void anAnswerOfTheApiGoesAsItIs() {
        Response answer = given().header("Accept-Encoding", "gzip").get("/api/engines");
        assertThat(answer.header("Content-Encoding")).isNull();
        assertThat(answer.contentType()).startsWith("application/json");
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(
            nullValues = "-",
            value = {
                "POST, /orders/1/accept, Content-Encoding, br, 415",
                "POST, /orders/1/accept, Content-Type, application/json, 415",
                "POST, /orders/1/accept, -, -, 413",
                "PATCH, /orders, -, -, 405",
                "GET, /look/nothing.css, -, -, 404",
                "GET, /%00, -, -, 404",
            })
    void whatIsRefusedBeforeAnyEndpointIsAPageForAPersonToo(
            String method, String path, String header, String value, int status) {
        String body = "by=Ada" + "x".repeat(status == 413 ? 300_000 : 0);
        for (String accepted : List.of(A_BROWSER, "application/json")) {
            RequestSpecification asked = given().urlEncodingEnabled(false).header("Accept", accepted);
            if (method.equals("POST")) {
                asked.contentType("Content-Type".equals(header) ? value : Form.MEDIA_TYPE)
                        .body(body);
            }
            if ("Content-Encoding".equals(header)) {
                asked.header(header, value);
            }
            Response answer = asked.request(method, path);
            assertThat(answer.statusCode()).isEqualTo(status);
            if (accepted.equals(A_BROWSER)) {
                assertThat(answer.contentType()).isEqualTo("text/html;charset=UTF-8");
                assertThat(answer.header("Content-Security-Policy")).isEqualTo(PageGuard.POLICY);
                assertThat(answer.asString()).contains("<h1><span class=\"stamp\">" + status);
            } else {
                assertThat(answer.contentType()).isEqualTo("application/problem+json");
            }
        }
    }

    @Test
    void aRefusalIsAPageForAPersonAndADocumentForAProgram() {
        assertThat(seen("/nowhere").asString())
                .contains("<h1>", "Nothing is found at this path", "There is nothing at /nowhere.");
        assertThat(given().get("/nowhere").contentType()).isEqualTo("application/problem+json");
        assertThat(given().header("Accept", A_BROWSER).get("/api/nowhere").contentType())
                .isEqualTo("application/problem+json");
        Response wrongMethod = given().header("Accept", A_BROWSER).delete("/");
        assertThat(wrongMethod.statusCode()).isEqualTo(405);
        assertThat(wrongMethod.contentType()).startsWith("text/html");
        assertThat(given().header("Accept", "application/json").get("/").statusCode())
                .isEqualTo(406);
    }

    /** A browser sends no question ahead for a form, whatever the case its type is written in. */
    @ParameterizedTest
    @ValueSource(strings = {"Application/X-WWW-Form-Urlencoded", "APPLICATION/x-www-form-urlencoded; charset=utf-8"})
    void soIsOneWhoseTypeIsWrittenOtherwise(String type) {
        Response answer = given().config(
                        RestAssured.config().encoderConfig(encoderConfig().encodeContentTypeAs(type, ContentType.TEXT)))
                .header("Sec-Fetch-Site", "cross-site")
                .header("Content-Type", type)
                .body("by=Ada")
                .post("/orders/1/withdraw");
        assertThat(answer.statusCode()).isEqualTo(403);
    }

    /** A type of wildcards is taken for that of a form; a body of none comes no further than the door. */
    @ParameterizedTest(name = "{0} from {1}")
    @CsvSource({
        "application/*, cross-site, 403",
        "*/*, cross-site, 403",
        "text/plain, cross-site, 403",
        "multipart/form-data; boundary=b, same-site, 403",
        "application/json, cross-site, 403",
        ", cross-site, 415",
        "application/*, same-origin, 404",
        "text/plain, same-origin, 415",
    })
    void noPageOfSomebodyElseSendsUsAnythingWhateverItsTypeIsSaidToBe(String type, String site, int status)
            throws Exception {
        HttpRequest.Builder asked = HttpRequest.newBuilder(service.resolve("/orders/999999/withdraw"))
                .header("Sec-Fetch-Site", site)
                .POST(HttpRequest.BodyPublishers.ofString("by=Ada&key=12345678&version=1&/reason=none"));
        if (type != null) {
            asked.header("Content-Type", type);
        }
        assertThat(HttpClient.newHttpClient()
                        .send(asked.build(), HttpResponse.BodyHandlers.ofString())
                        .statusCode())
                .isEqualTo(status);
    }

    /** A program asks from where it likes: a change needs a key, which no browser sends for another site unasked. */
    @Test
    void theApiAnswersWhateverPageAsksIt() {
        for (String method : List.of("GET", "HEAD")) {
            assertThat(given().header("Sec-Fetch-Site", "cross-site")
                            .request(method, "/orders")
                            .statusCode())
                    .as(method)
                    .isEqualTo(200);
        }
        assertThat(given().header("Sec-Fetch-Site", "cross-site")
                        .contentType(ContentType.JSON)
                        .body("{\"engine\":\"BRIMSLEIGH-S34\",\"stamp\":\"020\"}")
                        .post("/api/estimate")
                        .statusCode())
                .isEqualTo(200);
    }

    /** What was looked for is kept, whichever unit it is shown in. */
    @Test
    void anotherUnitShowsTheSameEngines() {
        assertThat(seen("/?words=ost+four").asString())
                .contains("<a href=\"/?unit=in&amp;words=ost+four\">Show inches</a>");
        assertThat(seen("/?words=ost&unit=in").asString())
                .contains("<a href=\"/?unit=mm&amp;words=ost\">Show millimetres</a>")
                .contains("<input type=\"hidden\" name=\"unit\" value=\"in\">")
                .contains("<a href=\"/?unit=in\">Show all</a>");
    }

    /** The first could go to +0.25 by itself and the second needs +0.50; where no size is certain for a hole it is not said what the others lose. */
    @ParameterizedTest(name = "cylinder 4 of {0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "61.560 | Without hole 4 the others could go to <b class=\"fig\">+0.50</b>. Beyond its own wear that takes <b class=\"fig\">0.500 mm</b> out of hole 1, <b class=\"fig\">0.250 mm</b> out of hole 2, <b class=\"fig\">0.250 mm</b> out of hole 3, and ",
                "62.290 | Without hole 4 the others could go to <b class=\"fig\">+0.50</b>. What would avoid it:",
            })
    void whatOneBadHoleCostsIsTold(String fourth, String told) {
        Response page = filled(
                "/desk/TORRESK-F4",
                "known=bores&/unit=mm&/condition=worn&/presentSize/size=standard&/presentSize/knownFrom=record"
                        + "&number:/temperature=20&number:/cylinders/0/diameter=61.350"
                        + "&number:/cylinders/1/diameter=61.430&number:/cylinders/2/diameter=61.430"
                        + "&number:/cylinders/3/diameter=" + fourth);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.asString()).contains(told, "a specialist judges whether it can be had");
    }

    @Test
    void whatIsTypedStaysWhenMoreIsKnown() {
        String typed =
                "known=bores&/unit=in&/condition=worn&number:/deckFlatness=.002&number:/cylinders/0/diameter=3.045";
        String survey = filled("/desk/OSTRAVEL-4/known/survey", typed).asString();

        assertThat(survey)
                .contains(
                        "<span aria-current=\"true\">A full survey</span>",
                        "name=\"number:/deckFlatness\" type=\"text\" value=\".002\"",
                        "<option value=\"in\" selected>");
        assertThat(filled("/desk/OSTRAVEL-4/known/stamp", typed).asString())
                .contains("<option value=\"\" selected>as the stamp tells</option>");
    }

    /** Nobody measured how warm the holes are before somebody said so; the example is one of a block at 20 °C. */
    @Test
    void noTemperatureIsTakenForMeasuredThatNobodyTold() {
        assertThat(seen("/desk/OSTRAVEL-4").asString())
                .contains("name=\"number:/temperature\" type=\"text\" value=\"\"", "left empty: 20 ± 5 °C");
        assertThat(seen("/desk/OSTRAVEL-4/example").asString())
                .contains("name=\"number:/temperature\" type=\"text\" value=\"20\"");
    }

    /** Nobody knows the present size, and so not what all wear on one wall takes: the bar has no end there. */
    @Test
    void whereTheWorstIsNotKnownTheBarOfAHoleHasNoEnd() {
        String known = "known=bores&/unit=mm&/condition=worn&number:/cylinders/0/diameter=77.295"
                + "&number:/cylinders/1/diameter=77.295&number:/cylinders/2/diameter=77.295&number:/cylinders/3/diameter=77.295";
        String open = "with all wear on one wall is not known.";

        assertThat(filled("/desk/OSTRAVEL-4", known).asString())
                .contains("class=\"band open\"", open)
                .doesNotContain("class=\"band\"");
        assertThat(filled("/desk/OSTRAVEL-4", known + "&/presentSize/size=standard&/presentSize/knownFrom=record")
                        .asString())
                .contains("class=\"band\"")
                .doesNotContain("class=\"band open\"", open);
    }

    /** Clips come in tens, and four cylinders take eight; a kit without pistons has no price that it could be taken for whole by. */
    @Test
    void whatIsLeftOverAndWhatIsShortIsSaid() {
        assertThat(seen("/desk/TORRESK-F4/example").asString())
                .contains("Left over of what is sold together, and in the price: 2 × ");
        assertThat(seen("/desk/DRUMLACH-F2/example").asString())
                .containsPattern(
                        "<td class=\"fig\">–<br><span class=\"small\">short of KV-DF2-075; the rest [0-9.]+ EUR</span></td>");
    }

    /** A hole is called as its maker calls it. */
    @Test
    void whatIsWrongIsSaidWithItsHole() {
        assertThat(filled("/desk/DRUMLACH-F2", "known=bores&/unit=mm&/condition=worn&number:/cylinders/1/diameter=9.27")
                        .asString())
                .contains(">Hole right: ");
        assertThat(filled(
                                "/desk/OSTRAVEL-4",
                                "known=survey&/unit=mm&/condition=worn&number:/cylinders/0/grid/depths/0=10"
                                        + "&number:/cylinders/1/grid/readings/0/0=77.3&number:/cylinders/1/grid/readings/0/1=77,3")
                        .asString())
                .contains(">Hole 2, depth 1, pin: ");
    }

    @ParameterizedTest
    @CsvSource({"503, /orders/503", "' 7 ', /orders/7", "a/b, /orders/a%2Fb"})
    void anOrderIsFoundByItsNumber(String typed, String address) {
        Response found = given().redirects()
                .follow(false)
                .header("Accept", A_BROWSER)
                .queryParam("number", typed)
                .get("/orders/number");
        assertThat(found.statusCode()).isEqualTo(303);
        assertThat(found.header("Location")).endsWith(address);
    }

    @Test
    void whatATypistBringsIsNeverTakenForAPieceOfThePage() {
        assertThat(seen("/?words=%3Cscript%3Ealert(1)%3C/script%3E%22%27").asString())
                .doesNotContain("<script>alert")
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#39;");
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Sec-Fetch-Site | same-origin | 404",
                "Sec-Fetch-Site | none | 404",
                "Sec-Fetch-Site | cross-site | 403",
                "Sec-Fetch-Site | same-site | 403",
                "Origin | http://elsewhere | 403",
                "Origin | null | 403",
                "Origin | %%% | 403",
                "X-Nothing | said | 404",
            })
    void aFormFromAPageOfSomebodyElseIsRefused(String header, String value, int status) {
        Response answer = given().header(header, value)
                .contentType(Form.MEDIA_TYPE)
                .body("by=Ada")
                .post("/nowhere");
        assertThat(answer.statusCode()).isEqualTo(status);
    }

    @Test
    void noAddressIsAnsweredByAPageAndTheContractBoth() {
        assertThat(routes.ofTheApi()).isNotEmpty().isSubsetOf(routes.all());
        assertThat(routes.all().stream().filter(route -> !routes.ofTheApi().contains(route)))
                .isNotEmpty()
                .noneMatch(route -> route.path().startsWith("/api"));
    }

    @Test
    void everyEngineHasAnExampleThatIsAnswered() {
        List<String> engines = given().get("/api/engines?size=100").jsonPath().getList("engines.engine");
        assertThat(engines).isNotEmpty();
        for (String engine : engines) {
            assertThat(seen("/desk/" + engine + "/example").statusCode())
                    .as(engine)
                    .isEqualTo(200);
        }
    }

    @ParameterizedTest(name = "{0} with {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/desk/OSTRAVEL-4 | known=bores | 422 | /desk/OSTRAVEL-4",
                "/desk/OSTRAVEL-4 | /cylinders=1 | 400 | not a form of these pages",
                "/desk/OSTRAVEL-4 | /0=%zz | 400 | not a form of these pages",
                "/desk/NOBODY-1 | known=bores | 404 | NOBODY-1",
                "/desk/BRIMSLEIGH-S34/order | known=stamp&/stamp=020&/customer=Cy | 422 | Enter a name",
                "/desk/BRIMSLEIGH-S34/order | known=stamp&/stamp=020&/customer=Cy&by=Ada | 400 | The request has no key",
                "/orders/999999/accept | by=Ada&key=12345678&version=1&number:/quote=1 | 404 | There is no such order",
                "/orders/999999/sell | by=Ada | 404 | There is no such order",
            })
    void aFormThatIsNotFilledInIsToldSo(String path, String form, int status, String says) {
        Response page = given().header("Accept", A_BROWSER)
                .contentType(Form.MEDIA_TYPE)
                .body(form)
                .post(path);
        assertThat(page.statusCode()).isEqualTo(status);
        assertThat(page.asString()).containsIgnoringCase(says);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/desk/OSTRAVEL-4", "/bench/survey", "/orders/999999/accept"})
    void aFieldOfAThousandStepsIsRefusedAndNoFaultOfOurs(String path) {
        Response page = given().header("Accept", A_BROWSER)
                .contentType(Form.MEDIA_TYPE)
                .body("known=bores&by=Ada&key=12345678&version=1&/engine=OSTRAVEL-4&" + "/a".repeat(1_100) + "=1")
                .post(path);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.asString()).contains("This is not a form of these pages.");
    }

    /** The shop of the tests raises tax, and its quotes add it. */
    @Test
    void thePricesOfTheDeskAreSaidToBeBeforeTax() {
        assertThat(seen("/desk/OSTRAVEL-4/example").asString())
                .contains("<dt>Parts and work, before tax</dt>", "all prices before tax.");
        assertThat(filled("/desk/OSTRAVEL-4", "known=stamp&/stamp=050").asString())
                .contains("Parts and work, before tax</th>");
    }

    @Test
    void whatTheDeskNotesGoesWithTheOrder() {
        String asked = "known=stamp&/stamp=020";
        assertThat(filled("/desk/BRIMSLEIGH-S34", asked).asString())
                .contains("<textarea id=\"/notes\" name=\"/notes\"");

        Response made = filled(
                "/desk/BRIMSLEIGH-S34/order",
                asked
                        + "&/customer=Cy&by=Ada&key=noted-at-the-desk&/kind=rebuild&/block=EP-NOTED&/notes=Smokes.%0D%0ARuns%20on.");

        assertThat(made.statusCode()).isEqualTo(303);
        String order = made.header("Location").replaceAll(".*/", "");
        assertThat(given().get("/api/orders/" + order).<String>path("notes")).isEqualTo("Smokes.\nRuns on.");
    }

    private static Response filled(String path, String form) {
        return given().redirects()
                .follow(false)
                .header("Accept", A_BROWSER)
                .contentType(Form.MEDIA_TYPE)
                .body(form)
                .post(path);
    }

    private static Response seen(String path) {
        return given().urlEncodingEnabled(false).header("Accept", A_BROWSER).get(path);
    }
}
