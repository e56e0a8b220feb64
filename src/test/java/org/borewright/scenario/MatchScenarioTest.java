package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole jobs over real HTTP, on the demo catalogue in a real database. */
@QuarkusTest
class MatchScenarioTest {

    private static final String WORN_FOUR = """
            {"engine":"OSTRAVEL-4","unit":"mm","condition":"worn","date":"2026-03-02","temperature":20,
             "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[
             {"cylinder":"1","diameter":77.295},{"cylinder":"2","diameter":77.370},
             {"cylinder":"3","diameter":77.350},{"cylinder":"4","diameter":77.310}]}""";

    private static ValidatableResponse match(String body) {
        return given().contentType("application/json")
                .body(body)
                .post("/api/match")
                .then();
    }

    @Test
    void a_worn_four_goes_to_one_size_and_a_probed_wall_could_save_a_step() {
        match(WORN_FOUR)
                .statusCode(200)
                .body("verdict", equalTo("serves"))
                .body("size.size", equalTo("+0.50"))
                .body("couldSave.size.size", equalTo("+0.25"))
                .body("cylinders[1].cleanUp.worst.nm", equalTo(77_580_000))
                .body("bill.complete", equalTo(true))
                .body("bill.lines.number", hasItem("OVS4-GK"));
    }

    @Test
    void the_same_request_gives_the_same_bytes() {
        byte[] first = match(WORN_FOUR).extract().asByteArray();

        assertThat(match(WORN_FOUR).extract().asByteArray()).isEqualTo(first);
    }

    /** Source: 1 in = 25.4 mm exactly, 68 °F = 20 °C exactly. */
    @ParameterizedTest(name = "largest {0} in = {1} mm")
    @CsvSource({"3.2942, 83.67268", "3.2990, 83.7946", "3.3050, 83.947", "3.3100, 84.074"})
    void inches_and_millimetres_agree(String inches, String millimetres) {
        ValidatableResponse in = match(single("in", inches, "68", "F"));
        ValidatableResponse mm = match(single("mm", millimetres, "20", "C"));

        for (String path : new String[] {"verdict", "size", "sizes.certainty", "bill.lines.number", "total"}) {
            assertThat(mm.extract().<Object>path(path))
                    .as(path)
                    .isEqualTo(in.extract().<Object>path(path));
        }
        assertThat(mm.extract().<Object>path("sizes.finish.nm"))
                .isEqualTo(in.extract().<Object>path("sizes.finish.nm"));
    }

    private static String single(String unit, String diameter, String temperature, String scale) {
        return """
                {"engine":"BRIMSLEIGH-S34","unit":"%s","condition":"worn","date":"2026-03-02","temperature":%s,
                 "temperatureUnit":"%s","presentSize":{"size":"standard","knownFrom":"record"},
                 "cylinders":[{"cylinder":"1","diameter":%s}]}""".formatted(unit, temperature, scale, diameter);
    }

    @Test
    void a_cracked_cylinder_gets_no_kit() {
        match(WORN_FOUR.replace("\"diameter\":77.310}", "\"diameter\":77.310,\"findings\":[{\"kind\":\"cracked\"}]}"))
                .statusCode(200)
                .body("verdict", equalTo("refer to a specialist"))
                .body("holds[0].cylinders", equalTo(List.of("4")));
    }
}
