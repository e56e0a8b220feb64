package org.borewright.api.order;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is sent about an order is answered or refused, and never a fault of ours. */
@QuarkusTest
class HostileOrdersTest {

    private static final List<String> HOSTILE = List.of(
            "{\"nobody-knows\":1}",
            "[[[]]]",
            "\"\"",
            "\"\\u0000\"",
            "\"\\ud800\"",
            "\"\uD83D\uDCA5 \u202E\u0301 <script>'; --\"",
            "\"" + "x".repeat(20_000) + "\"",
            "NaN",
            "-Infinity",
            "1e2147483648",
            "0.5",
            "-1",
            "9".repeat(60));

    /** What is sent, with a hole where the hostile value goes. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/api/orders | {'kind': @, 'customer': 'A', 'engine': 'HALVERN-131', 'block': 'HO-1'}",
                "/api/orders | {'customer': @, 'engine': 'HALVERN-131'}",
                "/api/orders | {'customer': 'A', 'engine': @, 'block': 'HO-1'}",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'block': @}",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'block': 'HO-1', 'barrels': @}",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'block': 'HO-1', 'barrels': [{'cylinder': @, 'tag': 'HO-B'}]}",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'block': 'HO-1', 'barrels': [{'cylinder': '1', 'tag': @}]}",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'notes': @}",
                "/api/orders | @",
                "{quoted}/survey | {'engine': @}",
                "{accepted}/did-not-clean-up | @",
                "{quoted}/quotes | {'way': @}",
                "{quoted}/quotes | {'size': @}",
                "{quoted}/quotes | {'alternatives': @}",
                "{quoted}/accept | {'quote': @}",
                "{quoted}/accept | {'quote': 1, 'mayWait': @}",
                "{quoted}/decline | {'reason': @}",
                "{quoted}/withdraw | {'reason': @}",
                "{quoted}/notes | {'notes': @}",
                "{accepted}/confirm | {'engine': 'HALVERN-131', 'unit': 'mm', 'size': @}",
                "/api/orders/999999999/finish | {'cylinders': @}",
                "/api/orders/999999999/release | @",
                "/api/stock/NH-OS6-G/arrivals | {'quantity': @}",
                "/api/hooks | {'url': @}",
            },
            quoteCharacter = '"')
    void aHostileValueIsRefused(String path, String body) {
        Place place = place(path);
        for (String hostile : HOSTILE) {
            if (path.endsWith("/notes") && hostile.equals("\"\"")) {
                continue; // No notes are fine.
            }
            String sent = body.replace('\'', '"').replace("@", hostile);
            Response answer = place.asking().body(sent).post(place.path);
            assertThat(answer.statusCode())
                    .as("%s: %s", sent, answer.asString())
                    .isBetween(400, 428);
            assertThat(answer.contentType()).startsWith("application/problem+json");
        }
    }

    /** A name may be anything; what is kept is read again, in JSON and on paper. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert('x')</script>",
                "'; drop table orders; --",
                "\\ud83d\\udca5 \\uffff",
                "\uD83D\uDCA5 \u05D0\u200F\u0301",
                "{orders}%s${java.home}"
            })
    void whatIsKeptIsReadAgain(String customer) {
        String path = quoted(customer);
        assertThat(given().get(path).statusCode()).isEqualTo(200);
        Response paper = given().accept("application/pdf").get(path + "/quotes/1");
        assertThat(paper.statusCode()).isEqualTo(200);
        assertThat(paper.contentType()).isEqualTo("application/pdf");
    }

    @ParameterizedTest
    @ValueSource(strings = {"%00", "%ff", "1%20or%201", "%F0%9F%92%A5", "-1", "1e9", "0", "01", "99999999999999999999"})
    void whatNamesNothingIsNotFound(String name) {
        for (String path : List.of(
                "/api/orders/%s",
                "/api/orders/%s/quotes/1",
                "/api/orders/1/papers/%s",
                "/api/blocks/%s",
                "/api/stock/%s",
                "/api/hooks/%s")) {
            Response answer = given().urlEncodingEnabled(false).get(path.formatted(name));
            assertThat(answer.statusCode()).as(path, name).isIn(400, 404);
        }
    }

    /** In every free text of every body, whatever it is for. */
    @ParameterizedTest(name = "{0} {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/api/orders | {'customer': @, 'engine': 'HALVERN-131', 'block': 'HO-3'} | /customer",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'block': @} | /block",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'block': 'HO-3', 'barrels': [{'cylinder': '1', 'tag': @}]} | /barrels/0/tag",
                "/api/orders | {'customer': 'A', 'engine': 'HALVERN-131', 'block': 'HO-3', 'notes': @} | /notes",
                "{quoted}/notes | {'notes': @} | /notes",
                "{quoted}/decline | {'reason': @} | /reason",
                "{quoted}/withdraw | {'reason': @} | /reason",
                "/api/hooks | {'url': @} | /url",
                "/api/match | {'gauge': {'name': @, 'resolution': 0.001}} | /gauge/name",
                "/api/match | {'cylinders': [{'cylinder': @}]} | /cylinders/0/cylinder",
                "/api/bench | {'pistons': [{'tag': @}]} | /pistons/0/tag",
                "/api/estimate | {'engine': 'HALVERN-131', 'stamp': @} | /stamp",
            })
    void whatCannotBeSeenIsRefusedWithItsPlaceAndItsCode(String path, String body, String pointer) {
        Place place = place(path);
        for (String code : List.of("D800", "DC00", "202E", "2066", "0000", "0007", "0085")) {
            String text = "\"Ada \\u" + code + " Lumen\"";
            RequestSpecification asking = path.matches("/api/(match|bench|estimate)")
                    ? given().contentType("application/json")
                    : place.asking();
            Response answer =
                    asking.body(body.replace('\'', '"').replace("@", text)).post(place.path);

            assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(422);
            String fault = "errors.find { it.pointer == '" + pointer + "' }";
            assertThat(answer.jsonPath().getString(fault + ".reason")).startsWith("Character 5 is U+" + code + ", ");
            assertThat(answer.jsonPath().getString(fault + ".wayOut")).startsWith("Leave that character out");
        }
    }

    @ParameterizedTest
    @CsvSource({"%00, 0000", "%07, 0007", "%E2%80%AE, 202E", "%E2%81%A9, 2069", "%C2%85, 0085"})
    void nobodyIsCalledSo(String sent, String code) {
        for (Response answer : List.of(
                given().urlEncodingEnabled(false).get("/api/orders?customer=a" + sent + "b"),
                given().urlEncodingEnabled(false)
                        .contentType("application/json")
                        .header("Idempotency-Key", UUID.randomUUID().toString())
                        .post("/api/hooks?by=a" + sent + "b"))) {
            assertThat(answer.statusCode()).isEqualTo(400);
            assertThat(answer.jsonPath().getString("errors[0].pointer")).isIn("customer", "by");
            assertThat(answer.jsonPath().getString("errors[0].reason")).startsWith("Character 2 is U+" + code + ", ");
        }
    }

    /** A table of orders holds no such day: it is refused before it is looked for, to a program and to a person. */
    @ParameterizedTest(name = "{0}={1}")
    @CsvSource({
        "from, %2B999999999-12-31",
        "to, %2B999999999-12-31",
        "from, -999999999-01-01",
        "to, -5000-01-01",
        "from, 0000-01-01",
        "from, 1999-12-31",
        "to, 2100-01-01",
    })
    void aDayOutOfAllReasonIsRefusedWithItsLimits(String parameter, String day) {
        String query = "orders?" + parameter + "=" + day;
        Response answer = given().urlEncodingEnabled(false).get("/api/" + query);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(400);
        assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/bad-parameter");
        assertThat(answer.jsonPath().getString("errors[0].pointer")).isEqualTo(parameter);
        assertThat(answer.jsonPath().getString("errors[0].limit")).isEqualTo("2000-01-01 to 2099-12-31");

        Response page = given().urlEncodingEnabled(false).accept("text/html").get("/" + query);
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(page.asString()).contains("The date is out of range.", "2000-01-01 to 2099-12-31");
    }

    @ParameterizedTest
    @ValueSource(strings = {"from=2000-01-01&to=2099-12-31", "from=2099-12-31", "to=2000-01-01"})
    void theFirstDayAndTheLastAreLookedFor(String days) {
        assertThat(given().get("/api/orders?" + days).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "get    | /api/orders?from=2026-03-02&to=2026-03-01                 | to | The last day is before the first.",
                "delete | /api/hooks/00000000-0000-0000-0000-000000000001?by=A&by=B | by | The parameter is given 2 times.",
            })
    void aParameterThatCannotBeMeantIsToldOnce(String method, String path, String parameter, String told) {
        given().request(method.strip().toUpperCase(Locale.ROOT), path)
                .then()
                .statusCode(400)
                .body("errors.pointer", contains(parameter))
                .body("errors.reason", contains(told));
    }

    /** Notes may have lines. */
    @Test
    void linesOfNotesAreKept() {
        String tag = "HO-" + UUID.randomUUID().toString().substring(0, 8);
        Response made = changing(1).body("""
                        {"customer": "A", "engine": "HALVERN-131", "block": "%s", "notes": "one\\n\\ttwo"}""".formatted(tag)).post("/api/orders");

        assertThat(made.jsonPath().getString("notes")).isEqualTo("one\n\ttwo");
    }

    /** Nobody need guess what a body holds that was left out. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "{quoted}/decline | /reason | Send {\"reason\": \"why\"}.",
                "{quoted}/withdraw | /reason | Send {\"reason\": \"why\"}.",
                "{quoted}/notes | /notes | Send {\"notes\": \"what is to be noted\"}.",
                "{quoted}/accept | /quote | Add the field.",
                "/api/stock/NH-OS6-G/arrivals | /quantity | Send {\"quantity\": 2}.",
                "/api/hooks | /url | Send {\"url\": \"https://store.example/told\"}.",
            },
            quoteCharacter = '\'')
    void anEmptyBodyLacksItsMember(String path, String pointer, String wayOut) {
        Place place = place(path);
        for (String body : List.of("", "{}")) {
            Response answer = place.asking().body(body).post(place.path);

            assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(422);
            assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/missing-field");
            assertThat(answer.jsonPath().getString("errors[0].pointer")).isEqualTo(pointer);
            assertThat(answer.jsonPath().getString("errors[0].wayOut")).isEqualTo(wayOut);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"short", "with blank in it", "\u00fc\u00fc\u00fc\u00fc\u00fc\u00fc\u00fc\u00fc"})
    void whatIsNoKeyIsRefused(String key) {
        Response answer = given().contentType("application/json")
                .header("Idempotency-Key", key)
                .queryParam("by", "Ada")
                .body("{\"customer\":\"A\",\"engine\":\"HALVERN-131\",\"block\":\"HO-2\"}")
                .post("/api/orders");

        assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/key-missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"*", "3", "W/\"3\"", "\"\"", "\"a\"", "\"-1\"", "\"1\", \"2\"", "\"9999999999\""})
    void whatIsNoVersionIsRefused(String version) {
        Response answer = given().contentType("application/json")
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .header("If-Match", version)
                .queryParam("by", "Ada")
                .post("/api/orders/1/release");

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/bad-version");
        assertThat(answer.jsonPath().getString("detail"))
                .startsWith("The header If-Match is " + version + ", ")
                .endsWith("as in \"4\".");
    }

    /** Where something is sent, and to which version of the order, 1 where there is none. */
    private record Place(String path, int version) {

        RequestSpecification asking() {
            return changing(version);
        }
    }

    /** An order that stands where the move can be made, for before that no body is read. */
    private static Place place(String path) {
        if (path.startsWith("{quoted}")) {
            return new Place(path.replace("{quoted}", quoted("A")), 3);
        }
        if (path.startsWith("{accepted}")) {
            String order = quoted("A");
            move(order + "/accept", 3, "{\"quote\": 1, \"mayWait\": true}");
            return new Place(path.replace("{accepted}", order), 4);
        }
        return new Place(path, 1);
    }

    private static String quoted(String customer) {
        String tag = "HO-" + UUID.randomUUID().toString().substring(0, 8);
        Response made = changing(1)
                .body("{\"customer\":\"" + customer + "\",\"engine\":\"HALVERN-131\",\"block\":\"" + tag + "\"}")
                .post("/api/orders");
        assertThat(made.statusCode()).isEqualTo(201);
        String order = "/api/orders/" + made.jsonPath().getLong("number");
        move(order + "/survey", 1, """
                {"engine": "HALVERN-131", "unit": "mm", "condition": "worn", "temperature": 20,
                 "presentSize": {"size": "standard", "knownFrom": "record"}, "cylinders": [{"cylinder": "1", "diameter": 53.720}]}""");
        move(order + "/quotes", 2, "{}");
        return order;
    }

    private static void move(String path, int version, String body) {
        Response answer = changing(version).body(body).post(path);
        assertThat(answer.statusCode()).as(answer.asString()).isBetween(200, 201);
    }

    private static RequestSpecification changing(int version) {
        return given().contentType("application/json")
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .header("If-Match", "\"" + version + "\"")
                .queryParam("by", "Ada");
    }
}
