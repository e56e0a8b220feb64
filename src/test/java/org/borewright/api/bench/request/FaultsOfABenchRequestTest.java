package org.borewright.api.bench.request;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import org.borewright.api.match.request.SampleRequest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each fault of a question of the bench is told at its place, with its way out. */
@QuarkusTest
class FaultsOfABenchRequestTest {

    private static final String PLAN = "/api/bench/kovarda-v11-pistons.json";
    private static final String HONED = "/api/bench/kovarda-v11-honed.json";

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/size | nothing | missing-field | It is not said which size the engine goes to.",
                "/size | \"+0.30\" | unknown-size | KOVARDA-V11 has no size \"+0.30\".",
                "/design | \"KELVARN-DF2\" | unknown-word | \"KELVARN-DF2\" is not known here.",
                "/pistons/0/tag | nothing | missing-field | It is not said what the piston is marked with.",
                "/pistons/0/tag | \"front one\" | wrong-form | A piston cannot be marked so.",
                "/pistons/1/tag | \"F1\" | wrong-pistons | Two pistons are marked \"F1\".",
                "/pistons/0/number | nothing | missing-field | The number of the piston is missing.",
                "/pistons/0/number | \"NH-OS4-050\" | unknown-part | No piston of KOVARDA-V11 bears the number \"NH-OS4-050\".",
                "/pistons/0/diameter | nothing | missing-field | The diameter of the piston is missing.",
                "/pistons/0/diameter | 84.0 | bad-reading | The reading is smaller than any piston of this engine.",
                "/pistons/0/diameter | 866.06 | bad-reading | The reading is larger than any piston of this engine.",
                "/pistons/0/mass | 0 | bad-figure | No piston weighs so.",
                "/pistons/0/mass | 447.0001 | bad-figure | No piston weighs so.",
                "/pistons/0/mass | 100000.001 | bad-figure | No piston weighs so.",
                "/pistons/0 | null | wrong-form | This is nothing where a piston belongs.",
                "/cylinders/1/cylinder | \"left\" | wrong-cylinders | \"left\" is not known here.",
                "/cylinders/0/diameter | 10 | bad-reading | The reading is smaller than any hole of this engine.",
                "/pistonGauge/kind | \"bore gauge\" | wrong-gauge | A bore gauge measures no piston.",
                "/gauge/kind | \"micrometer\" | wrong-gauge | A micrometer measures no hole.",
                "/weighed | \"wet\" | unknown-word | \"wet\" is not known here.",
                "/condition | \"rough\" | unknown-word | \"rough\" is not known here.",
                "/cylinders/0/findings/0/kind | \"split\" | unknown-word | \"split\" is not known here.",
            })
    void aFaultOfThePlanIsToldAtItsPlace(String place, String json, String type, String reason) {
        isTold("/api/bench", SampleRequest.in(PLAN).with(place, json), place, type, reason);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "/roomTemperature | nothing | missing-field | It is not said whether all holes were measured after the block had come to room temperature.",
                "/ringSet | nothing | missing-field | Several ring sets go with these pistons, and it is not said which was fitted.",
                "/ringSet | \"NH-KV11-R050P\" | unknown-word | \"NH-KV11-R050P\" is not known here.",
                "/cylinders/0/tag | \"F9\" | wrong-pistons | \"F9\" is not known here.",
                "/cylinders/0/piston | \"NH-KV11-025F\" | wrong-form | A tag and a number are both given.",
                "/cylinders/1/piston | nothing | missing-field | It is not said which piston goes in: give the tag of a measured one, or a number.",
                "/cylinders | nothing | missing-field | The cylinders are missing.",
                "/cylinders/0/findings/0/kind | nothing | missing-field | It is not said what was found.",
            })
    void aFaultOfTheFinishIsToldAtItsPlace(String place, String json, String type, String reason) {
        isTold("/api/finish", SampleRequest.in(HONED).with(place, json), place, type, reason);
    }

    /** The reading lies less than U from its tolerance. */
    @Test
    void aPlanThatIsTooCloseToCallStillSaysWhichHoleHasNoPiston() {
        String body = """
                {"engine": "HALVERN-T2", "unit": "mm", "size": "+0.50", "temperature": 20, "pistonTemperature": 20,
                 "pistons": [{"tag": "A", "number": "TV-HT2-050L", "diameter": 60.898}]}""";

        Response answer = given().contentType("application/json").body(body).post("/api/bench");

        assertThat(answer.jsonPath().getString("readiness")).isEqualTo("too close to call");
        assertThat(answer.jsonPath().getString("says"))
                .startsWith("Too close to call: ")
                .contains("; piston A.")
                .endsWith(
                        " No measured piston yet for cylinder right. Bore, and hone only once the piston is measured.");
    }

    /** As a match names it; the one that is cosmetic is noted beside it. */
    @ParameterizedTest
    @CsvSource({
        "/api/bench, /api/bench/kovarda-v11-pistons.json, readiness",
        "/api/finish, /api/bench/kovarda-v11-honed.json, judgement"
    })
    void aHiddenCrackIsToldOnTheBench(String path, String file, String says) {
        SampleRequest request = SampleRequest.in(file)
                .with("/cylinders/0/findings", "[{\"kind\": \"stain\"}, {\"kind\": \"cracked\"}]");

        JsonPath answer = given().contentType("application/json")
                .body(request.text())
                .post(path)
                .jsonPath();

        assertThat(answer.getString(says)).isEqualTo("hold");
        assertThat(answer.getString("says")).isEqualTo("Hold: A cylinder is beyond machining: cylinder front.");
        assertThat(answer.getString("holds[0].reason")).isEqualTo("beyond machining");
        assertThat(answer.getList("holes[0].findings.means", String.class))
                .containsExactly("noted, never blocks", "beyond machining");
    }

    /** In the order of the work: measured, skimmed, bored. */
    @Test
    void aSkimStandsInItsPlaceAmongTheOperations() {
        assertThat(given().contentType("application/json")
                        .body(SampleRequest.in(PLAN).text())
                        .post("/api/bench")
                        .jsonPath()
                        .getList("operations.operation", String.class))
                .containsSubsequence("tag", "strip", "wash", "survey", "skim", "bore", "hone", "final-wash");
    }

    @Test
    void onePistonGoesIntoOneHole() {
        SampleRequest twice =
                SampleRequest.in(HONED).with("/cylinders/1/piston", "nothing").with("/cylinders/1/tag", "\"F1\"");

        isTold(
                "/api/finish",
                twice,
                "/cylinders/1/tag",
                "wrong-pistons",
                "This piston goes into another hole already.");
    }

    /** Two makers have +0.50; without pistons nothing tells whose are meant. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TORRESK-F4 | +0.50 | /design | missing-field | Several makers have pistons of this size, and it is not said whose are meant.",
                "SELVARRE-3 | +0.75 | /size | unknown-size | No piston was ever made for SELVARRE-3 at +0.75.",
            })
    void itMustBeKnownWhosePistonsAreMeant(String engine, String size, String place, String type, String reason) {
        Response answer = given().contentType("application/json")
                .body("{\"engine\": \"" + engine + "\", \"unit\": \"mm\", \"size\": \"" + size + "\"}")
                .post("/api/bench");

        isTold(answer, place, type, reason);
    }

    private static void isTold(String path, SampleRequest request, String place, String type, String reason) {
        isTold(given().contentType("application/json").body(request.text()).post(path), place, type, reason);
    }

    private static void isTold(Response answer, String place, String type, String reason) {
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.jsonPath().getList("errors.pointer", String.class))
                .as(answer.asString())
                .contains(place);
        int at = answer.jsonPath().getList("errors.pointer", String.class).indexOf(place);
        assertThat(answer.jsonPath().getString("errors[" + at + "].reason")).isEqualTo(reason);
        if (answer.jsonPath().getList("errors").size() == 1) {
            assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/" + type);
        }
    }
}
