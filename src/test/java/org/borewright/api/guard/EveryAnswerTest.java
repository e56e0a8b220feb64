package org.borewright.api.guard;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.borewright.api.guard.Routes.Route;
import org.borewright.api.match.request.SampleRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class EveryAnswerTest {

    @Inject
    Routes routes;

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({
        "GET, /api/engines, 200",
        "GET, /api/engines/OSTRAVEL-4, 200",
        "GET, /api/engines/OSTRAVEL-4/sizes/+0.50/fit, 200",
        "GET, /api/engines/OSTRAVEL-4/sizes/+0.50/offers, 200",
        "GET, /api/parts/NH-OS4-050, 200",
        "GET, /problems, 200",
        "GET, /problems/bad-reading, 200",
        "GET, /problems/none, 404",
        "GET, /nowhere, 404",
        "GET, /api, 404",
        "GET, /api/, 404",
        "DELETE, /api/engines, 405",
        "GET, /api/match, 405",
    })
    void carriesTheHeadersThatKeepABrowserFromMakingMoreOfIt(String method, String path, int status) {
        Response answer = given().urlEncodingEnabled(false).request(method, path);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(answer.header("Content-Security-Policy")).startsWith("default-src 'none'");
        assertThat(answer.header("Cache-Control")).isNotBlank();
        assertThat(answer.header("Server")).isNull();
        assertThat(answer.header("X-Powered-By")).isNull();
        assertThat(answer.contentType()).startsWith(status == 200 ? "application/json" : "application/problem+json");
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "GET | /nowhere | The contract at /api/openapi names every path, and /problems every refusal.",
                "GET | /api/match | Use one of the methods in the Allow header.",
                "GET | /api/parts/NH-0S4-050 | Did you mean NH-OS4-050, NH-OS4-000 or NH-OS4-R050?",
                "GET | /api/engines?page=x&size=x | Correct or leave out the parameters named.",
                "DELETE | /api/hooks/1 | Say who does it, as in ?by=Ada.",
            })
    void aRefusalTellsTheWayOut(String method, String path, String wayOut) {
        Response answer = given().urlEncodingEnabled(false).request(method, path);
        assertThat(answer.jsonPath().getString("wayOut")).isEqualTo(wayOut);
    }

    @Test
    void aParameterThatNobodyReadsIsRefusedEverywhere() throws IOException {
        byte[] body = SampleRequest.inlineFour().text().getBytes(StandardCharsets.UTF_8);
        for (Route route : routes.ofTheApi()) {
            try (Wire wire = Wire.open()) {
                String asked = valid(route) + "?nobody-knows=1";
                String answer = route.method().equals("POST")
                        ? wire.post(asked, body).answer()
                        : wire.send(route.method() + " " + asked + " HTTP/1.1\nHost: shop\n\n")
                                .answer();
                assertThat(Refusal.in(answer).kind()).as(asked).isEqualTo("bad-parameter");
                // Whoever changes something must say who they are, too.
                assertThat(Refusal.in(answer).pointers())
                        .as(asked)
                        .contains("nobody-knows")
                        .isSubsetOf("nobody-knows", "by");
            }
        }
    }

    @ParameterizedTest(name = "{0} {1} may be {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "DELETE | /api/engines | GET, HEAD, OPTIONS",
                "DELETE | /api/engines/ | GET, HEAD, OPTIONS",
                "DELETE | /api/%65ngines/OSTRAVEL%2D4 | GET, HEAD, OPTIONS",
                "DELETE | /api//engines | GET, HEAD, OPTIONS",
                "DELETE | /api/engines;a=b | GET, HEAD, OPTIONS",
                "POST | /api/engines/OSTRAVEL-4/sizes/+0.50/offers/ | GET, HEAD, OPTIONS",
                "POST | /api/engines/a%2Fb/sizes/%2B0.50/fit | GET, HEAD, OPTIONS",
                "HEAD | /api/match | OPTIONS, POST",
                "GET | /api/match | OPTIONS, POST",
                "PUT | /api/parts/NH-OS4-050 | GET, HEAD, OPTIONS",
                "PATCH | /api/engines/OSTRAVEL-4/sizes/+0.50/fit | GET, HEAD, OPTIONS",
                "FOO | /problems | GET, HEAD, OPTIONS",
            })
    void aWrongMethodIsToldTheRightOnes(String method, String path, String allowed) {
        Response answer = given().urlEncodingEnabled(false).request(method, path);
        assertThat(answer.statusCode()).isEqualTo(405);
        assertThat(answer.header("Allow")).isEqualTo(allowed);
        if (!method.equals("HEAD")) {
            assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/wrong-method");
        }
        Response asked = given().urlEncodingEnabled(false).options(path);
        assertThat(asked.statusCode()).isEqualTo(200);
        assertThat(asked.header("Allow")).isEqualTo(allowed);
        assertThat(asked.asString()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/html", "application/xml", "image/png", "garb(age"})
    void aFormThatIsNotMadeIsRefused(String accept) {
        Response answer = given().header("Accept", accept).get("/api/engines");
        assertThat(answer.statusCode()).isEqualTo(406);
        assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/not-acceptable");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/api/engines | application/json",
                "/api/orders/1/quotes/1 | application/json or application/pdf",
                "/orders/1 | text/html",
                "/orders/1/quotes/1/paper | application/pdf",
            })
    void whoeverAsksForAnotherFormIsToldThoseThatAreMade(String path, String made) {
        Response answer = given().header("Accept", "image/png").get(path);
        assertThat(answer.statusCode()).isEqualTo(406);
        assertThat(answer.jsonPath().getString("wayOut"))
                .isEqualTo("Ask for " + made + ", or leave the Accept header out.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "text/plain",
                "application/xml",
                "multipart/form-data",
                "application/x-www-form-urlencoded",
                "garb(age"
            })
    void aBodyOfAnotherTypeIsRefused(String type) throws IOException {
        String body = SampleRequest.inlineFour().text();
        try (Wire wire = Wire.open()) {
            assertThat(wire.send("POST /api/match HTTP/1.1\nHost: shop\nContent-Type: " + type + "\nContent-Length: "
                                    + body.length() + "\n\n" + body)
                            .answer())
                    .startsWith("HTTP/1.1 415 ")
                    .contains("application/problem+json", "/problems/wrong-media-type");
        }
    }

    @Test
    void noGarbageAnywhereIsEverOurOwnFault() throws IOException {
        List<String> garbage = List.of(
                "%00",
                "%FF%FE",
                "%zz",
                "%",
                "..%2F..%2Fetc",
                "'%3B--",
                "%F0%9F%92%A9",
                "-1",
                "NaN",
                "a".repeat(1000),
                "%0d%0aX:1",
                "{}",
                "<x>",
                "*",
                "+",
                "%20",
                "%2B0.50",
                ";a=b");
        for (Route route : routes.ofTheApi()) {
            for (String piece : garbage) {
                isNoFaultOfOurs(route.method(), route.path().replaceAll("\\{[^}]*}", piece.replace("$", "")));
                isNoFaultOfOurs(route.method(), valid(route) + "?unit=" + piece + "&page=" + piece + "&words=" + piece);
                isNoFaultOfOurs(route.method(), valid(route) + "?" + piece);
            }
        }
    }

    @Test
    void noHeaderIsEverOurOwnFault() throws IOException {
        for (String header : List.of(
                "If-None-Match: garbage",
                "If-None-Match: \"",
                "If-None-Match: ,,,",
                "Accept: ;;;",
                "Accept-Language: \u00ff",
                "Content-Type: ;",
                "Range: bytes=9-1",
                "Content-Length: 0",
                "Cookie: =",
                "Origin: null",
                "X: " + "y".repeat(4000))) {
            for (Route route : routes.ofTheApi()) {
                try (Wire wire = Wire.open()) {
                    String answer = wire.send(
                                    route.method() + " " + valid(route) + " HTTP/1.1\nHost: shop\n" + header + "\n\n")
                            .answer();
                    assertThat(answer)
                            .as("%s with %s", route, header)
                            .doesNotStartWith("HTTP/1.1 5")
                            .doesNotContain("(closed)");
                }
            }
        }
    }

    private static String valid(Route route) {
        return route.path()
                .replace("{engine}", "OSTRAVEL-4")
                .replace("{size}", "+0.50")
                .replace("{number}", "NH-OS4-050")
                .replace("{name}", "BG-1")
                .replace("{order}", "1")
                .replace("{quote}", "1")
                .replace("{paper}", "1")
                .replace("{hook}", "1")
                .replace("{block}", "B-17")
                .replace("{problem}", "bad-reading");
    }

    private static void isNoFaultOfOurs(String method, String path) throws IOException {
        try (Wire wire = Wire.open()) {
            String answer = wire.send(method + " " + path
                            + " HTTP/1.1\nHost: shop\nContent-Type: application/json\nContent-Length: 0\n\n")
                    .answer();
            assertThat(answer)
                    .as("%s %s", method, path)
                    .startsWith("HTTP/1.1 ")
                    .doesNotStartWith("HTTP/1.1 5")
                    .doesNotContain("Exception", "at org.", "at io.");
            if (!isUri(path)) {
                // The server below us answers such a request line itself.
                assertThat(answer).as("%s %s", method, path).startsWith("HTTP/1.1 400 ");
            } else if (!answer.startsWith("HTTP/1.1 2")) {
                assertThat(answer).as("%s %s", method, path).contains("application/problem+json");
            }
        }
    }

    private static boolean isUri(String path) {
        try {
            return !new URI(path).getRawPath().isEmpty();
        } catch (URISyntaxException wrong) {
            return false;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET api/engines", "OPTIONS *", "GET /nowhere", "GET /api/nowhere", "GET /problems/none"})
    void whatLeadsNowhereIsToldSo(String request) throws IOException {
        try (Wire wire = Wire.open()) {
            Refusal refusal =
                    Refusal.in(wire.send(request + " HTTP/1.1\nHost: shop\n\n").answer());
            assertThat(refusal.status()).isEqualTo(404);
            assertThat(refusal.kind()).isEqualTo("unknown-path");
        }
    }

    @Test
    void aRequestWithoutAHostIsTold() throws IOException {
        try (Wire wire = Wire.open()) {
            assertThat(wire.send("GET /api/engines HTTP/1.1\n\n").answer())
                    .startsWith("HTTP/1.1 400 ")
                    .contains("application/problem+json", "/problems/bad-request");
        }
    }
}
