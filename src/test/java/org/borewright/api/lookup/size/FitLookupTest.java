package org.borewright.api.lookup.size;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.api.lookup.Counter.answer;
import static org.borewright.api.lookup.Counter.ask;
import static org.borewright.api.lookup.Counter.escaped;
import static org.borewright.api.lookup.Counter.lines;
import static org.borewright.api.lookup.Counter.refusal;
import static org.borewright.api.lookup.Counter.texts;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A web store asks what fits, keeps the answer, and asks again whether it still holds. */
@QuarkusTest
class FitLookupTest {

    private static final String FIT = "/api/engines/OSTRAVEL-4/sizes/+0.50/fit";
    private static final String KEPT = "max-age=60, public";

    static Stream<String> fits() {
        return lines("sizes.csv").stream()
                .map(line -> "/api/engines/" + line.getField("engine") + "/sizes/" + escaped(line.getField("size"))
                        + "/fit");
    }

    private static Response askAgain(String path, String... known) {
        var asked = given().urlEncodingEnabled(false);
        for (String tags : known) {
            asked = asked.header("If-None-Match", tags);
        }
        return asked.get(path);
    }

    private static String tag() {
        return ask(FIT).header("ETag");
    }

    @Test
    void theAnswerMayBeKeptUnderATagOfTheRevision() {
        Response answer = ask(FIT);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.header("Cache-Control")).isEqualTo(KEPT);
        assertThat(answer.header("ETag"))
                .matches("\"[0-9a-f]{12}-.+\"")
                .contains(answer.jsonPath().getString("revision"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "TAG",
                "W/TAG",
                "*",
                "\"other\", TAG",
                "\"other\",W/\"another\" , W/TAG",
                "TAG, \"other\"",
                "\"with, a comma\", TAG",
                "\"\", TAG",
                " TAG ",
                " * ",
            })
    void whoHasTheAnswerIsToldThatItHolds(String tags) {
        Response again = askAgain(FIT, tags.replace("TAG", tag()));
        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.asByteArray()).isEmpty();
        assertThat(again.header("ETag")).isEqualTo(tag());
        assertThat(again.header("Cache-Control")).isEqualTo(KEPT);
    }

    @Test
    void severalHeadersAreOneList() {
        assertThat(askAgain(FIT, "\"other\"", tag()).statusCode()).isEqualTo(304);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"other\"",
                "BARE",
                "\"x-BARE\"",
                "\"BARE-x\"",
                "\"*\"",
                "\"other\", *",
                "\", *, \"",
                "\"",
                "W/",
                ",",
                "garbage",
            })
    void whoHasAnotherAnswerGetsThisOne(String tags) {
        Response again = askAgain(FIT, tags.replace("BARE", tag().replace("\"", "")));
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(again.asByteArray()).isEqualTo(ask(FIT).asByteArray());
    }

    @Test
    void aQuestionThatIsWrongIsRefusedWhateverIsKept() {
        assertThat(askAgain("/api/engines/NONE/sizes/+0.50/fit", "*").statusCode())
                .isEqualTo(404);
        assertThat(askAgain("/api/engines/OSTRAVEL-4/sizes/+9/fit", "*").statusCode())
                .isEqualTo(404);
        assertThat(askAgain(FIT + "?unit=cm", "*").statusCode()).isEqualTo(400);
    }

    @Test
    void whatMayBeKeptIsKeptByEnginesAsWell() {
        for (String path : List.of("/api/engines", "/api/engines/OSTRAVEL-4")) {
            Response answer = ask(path);
            assertThat(answer.header("Cache-Control")).isEqualTo(KEPT);
            assertThat(askAgain(path, answer.header("ETag")).statusCode()).isEqualTo(304);
        }
    }

    @Test
    void headTellsTheSameWithoutTheBody() {
        Response head = given().urlEncodingEnabled(false).head(FIT);
        assertThat(head.statusCode()).isEqualTo(200);
        assertThat(head.header("ETag")).isEqualTo(tag());
        assertThat(head.header("Cache-Control")).isEqualTo(KEPT);
        assertThat(head.asByteArray()).isEmpty();
        Response again =
                given().urlEncodingEnabled(false).header("If-None-Match", tag()).head(FIT);
        assertThat(again.statusCode()).isEqualTo(304);
    }

    @ParameterizedTest
    @CsvSource({
        "OSTRAVEL-4, %2B0.50, +0.50",
        "OSTRAVEL-4, +0.50, +0.50",
        "OSTRAVEL-4, %2b0%2E50, +0.50",
        "BRIMSLEIGH-S34, %2B0.010%20in, +0.010 in",
        "BRIMSLEIGH-S34, +0.010%20in, +0.010 in",
        "OSTRAVEL-4, standard, standard",
    })
    void thePlusOfASizeMayBeEscapedOrNot(String engine, String written, String size) {
        assertThat(answer("/api/engines/" + engine + "/sizes/" + written + "/fit")
                        .path("size")
                        .asText())
                .isEqualTo(size);
    }

    @ParameterizedTest(name = "{1} of {0}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "OSTRAVEL-4 | 0.5 | +0.50 | standard, +0.25, +0.50, +0.75, +1.00",
                "OSTRAVEL-4 | +.50 | +0.50 | standard, +0.25, +0.50, +0.75, +1.00",
                "OSTRAVEL-4 | 0.50 mm | +0.50 | standard, +0.25, +0.50, +0.75, +1.00",
                "OSTRAVEL-4 | +0.020 | nothing | standard, +0.25, +0.50, +0.75, +1.00",
                "OSTRAVEL-4 | +1.25 | nothing | standard, +0.25, +0.50, +0.75, +1.00",
                "OSTRAVEL-4 | STANDARD | nothing | standard, +0.25, +0.50, +0.75, +1.00",
                "OSTRAVEL-4 | -0.50 | nothing | standard, +0.25, +0.50, +0.75, +1.00",
                "BRIMSLEIGH-S34 | +0.020 | +0.020 in | standard, +0.010 in, +0.020 in, +0.030 in, +0.040 in",
                "BRIMSLEIGH-S34 | +0.010+in | nothing | standard, +0.010 in, +0.020 in, +0.030 in, +0.040 in",
                "BRIMSLEIGH-S34 | +0.50 | nothing | standard, +0.010 in, +0.020 in, +0.030 in, +0.040 in",
                "MIRENDAL-P1 | A | nothing | standard",
                "MIRENDAL-P1 | {size} | nothing | standard",
            })
    void aSizeTheEngineHasNotIsRefusedWithAllItHas(String engine, String typed, String suggestion, String sizes) {
        for (String of : List.of("fit", "offers")) {
            JsonNode problem = refusal("/api/engines/" + engine + "/sizes/" + escaped(typed) + "/" + of, 404);
            assertThat(problem.path("type").asText()).isEqualTo("/problems/unknown-size");
            JsonNode error = problem.at("/errors/0");
            assertThat(error.path("pointer").asText()).isEqualTo("size");
            assertThat(error.path("value").asText()).isEqualTo(typed);
            assertThat(error.path("wayOut").asText()).isEqualTo("Use one of: " + sizes + ".");
            assertThat(error.at("/suggestion/value").asText("nothing")).isEqualTo(suggestion);
        }
    }

    @ParameterizedTest
    @MethodSource("fits")
    void whatFitsNamesNoPriceAndNoStock(String path) {
        Set<String> members = new TreeSet<>();
        membersOf(answer(path), members);
        assertThat(members)
                .isNotEmpty()
                .noneMatch(member -> member.matches(
                        "(?i).*(price|amount|currency|total|stock|hand$|onHand|lead|availab|offers|date|cost).*"));
        assertThat(ask(path).asString()).doesNotContain("EUR", "in stock", "to be ordered");
        assertThat(ask(path).asByteArray()).isEqualTo(ask(path).asByteArray());
    }

    private static void membersOf(JsonNode node, Set<String> members) {
        node.properties().forEach(member -> {
            members.add(member.getKey());
            membersOf(member.getValue(), members);
        });
        if (node.isArray()) {
            node.forEach(item -> membersOf(item, members));
        }
    }

    @Test
    void twoMakersPistonsStandSideBySide() {
        JsonNode fit = answer("/api/engines/TORRESK-F4/sizes/+0.50/fit");
        assertThat(texts(fit.path("choices"), "design")).containsExactlyInAnyOrder("NORHEIM-TF4", "KELVARN-TF4");
        assertThat(fit.at("/choices/0/clearance")).isNotEqualTo(fit.at("/choices/1/clearance"));
    }

    @Test
    void leftAndRightPistonsStandAtTheirHoles() {
        JsonNode pistons = answer("/api/engines/HALVERN-T2/sizes/+0.25/fit").at("/choices/0/pistons");
        assertThat(texts(pistons, "cylinder")).containsExactly("left", "right");
        assertThat(texts(pistons.at("/0/numbers"))).containsExactly("TV-HT2-025L");
        assertThat(texts(pistons.at("/1/numbers"))).containsExactly("TV-HT2-025R");
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "SELVARRE-3 | +0.75 | no piston was ever made in this size | nothing",
                "HALVERN-131 | +1.25 | needs further engine work; not offered | nothing",
                "TORRESK-P2 | +0.75 | a part that goes with this piston is not supplied | NH-TP2-R075, never made",
            })
    void whatStandsAgainstASizeIsSaid(String engine, String size, String reason, String wanting) {
        JsonNode fit = answer("/api/engines/" + engine + "/sizes/" + escaped(size) + "/fit");
        assertThat(fit.path("offered").booleanValue()).isFalse();
        assertThat(Stream.concat(
                                fit.path("blocks").valueStream(),
                                fit.at("/choices/0/blocks").valueStream())
                        .map(block -> block.path("says").asText() + " | " + wanting(block)))
                .contains(reason + " | " + wanting);
    }

    private static String wanting(JsonNode block) {
        return block.path("withdrawn")
                .valueStream()
                .map(gone ->
                        gone.path("number").asText() + ", " + gone.path("state").asText())
                .findFirst()
                .orElse("nothing");
    }
}
