package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an answer says would settle a close call is asked again with, over real HTTP. */
@QuarkusTest
class CloseCallScenarioTest {

    private static final String WEAR =
            "ringsOnly.cylinders[0].checks.find { it.check == 'largest diameter in service' }.";

    private static ValidatableResponse match(String engine, String uncertainty, String cylinders) {
        return given().contentType("application/json")
                .body("""
                        {"engine":"%s","unit":"mm","condition":"worn","date":"2026-03-02","temperature":20,
                         "presentSize":{"size":"standard","knownFrom":"record"},"gauge":{"kind":"bore gauge","uncertainty":%s,"resolution":0.001},
                         "cylinders":[%s]}""".formatted(engine, uncertainty, cylinders))
                .post("/api/match")
                .then()
                .statusCode(200);
    }

    /** 53.735 allowed; 1 K of a sleeve of α 15 × 10⁻⁶ /K is worth 0.001612 mm of 53.732, the step 0.000577. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            53.732 | 0.005    | too close to call | measure again with a gauge whose expanded uncertainty is at most 0.002463 mm, all else as it was
            53.732 | 0.002463 | in                |
            53.732 | 0.002464 | too close to call | measure again with a gauge whose expanded uncertainty is at most 0.002463 mm, all else as it was
            53.734 | 0.000001 | too close to call | the value lies nearer to the limit than the temperature can tell, even at 20 °C and so stated, and no gauge settles it: move off the limit
            """)
    void theGaugeNamedSettlesTheWearAndOneALittleWorseDoesNot(
            String largest, String uncertainty, String outcome, String next) {
        match("HALVERN-131", uncertainty, "{\"cylinder\":\"1\",\"diameter\":" + largest + "}")
                .body(WEAR + "figures.limit.nm", equalTo(53_735_000))
                .body(WEAR + "outcome", equalTo(outcome))
                .body(WEAR + "next", next == null ? nullValue() : equalTo(next));
    }

    /** 71.216 + 0.005 lies 0.004 below what a hone may reach at standard; 1 K takes 0.001624 of that. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            71.216  | 0.005 | +0.25    | standard
            71.216  | 0.003 | standard |
            71.220  | 0.005 | +0.25    |
            71.2195 | 0.005 | +0.25    |
            """)
    void aHoneThatAGaugeProvesIsPromisedAndNoOther(String largest, String uncertainty, String size, String saved) {
        match(
                        "TORRESK-P2",
                        uncertainty,
                        "{\"cylinder\":\"1\",\"diameter\":" + largest + "},{\"cylinder\":\"2\",\"diameter\":71.206}")
                .body("size.size", equalTo(size))
                .body("couldSave.size.size", equalTo(saved))
                .body(
                        "couldSave.readings[0].next",
                        saved == null
                                ? nullValue()
                                : startsWith("measure again with a gauge whose expanded uncertainty is at most 0.003"));
    }
}
