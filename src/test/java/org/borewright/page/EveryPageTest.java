package org.borewright.page;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.regex.Pattern;
import org.borewright.api.guard.Routes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds of every page, whoever looks at it. */
@QuarkusTest
class EveryPageTest {

    private static final String A_BROWSER = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";
    private static final int HEAVIEST_BYTES = 100_000;
    private static final Pattern LOOK = Pattern.compile("(?:href|src)=\"(/look/[^\"]+)\"");

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
        "/desk/OSTRAVEL-4?order=999999, 404",
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

    private static Response seen(String path) {
        return given().urlEncodingEnabled(false).header("Accept", A_BROWSER).get(path);
    }
}
