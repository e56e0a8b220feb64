package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sales desk with a crown in hand, over real HTTP. */
@QuarkusTest
class EstimateScenarioTest {

    private static ValidatableResponse post(String path, String body) {
        return given().contentType("application/json").body(body).post(path).then();
    }

    private static ValidatableResponse estimate(String engine, String stamp) {
        return post("/api/estimate", """
                {"engine":"%s","stamp":"%s","date":"2026-03-02"}""".formatted(engine, stamp));
    }

    @Test
    void aStampLeadsToTheWaysWithPriceDayAndTheReadingThatDecides() {
        estimate("BRIMSLEIGH-S34", "020")
                .statusCode(200)
                .body("unit", equalTo("in"))
                .body("stamp.size", equalTo("+0.020 in"))
                .body("stamp.readAs", equalTo("20 thousandths of an inch"))
                .body("branches.way", equalTo(List.of("rings only", "hone only", "rebore", "rebore", "sleeve")))
                .body("branches[2].size.size", equalTo("+0.030 in"))
                .body("branches[2].rebuildsLeft.byMetal", equalTo(1))
                .body("branches[4].total", nullValue());
    }

    /** The reading named for a size is the one with which a match finds it certain, and a thousandth more is not. */
    @ParameterizedTest(name = "77.402{0}: {1}")
    @CsvSource({"186, certain", "187, possible"})
    void theReadingThatDecidesIsThatOfTheMatchThatFollows(String lastDigits, String certainty) {
        estimate("OSTRAVEL-4", "STD")
                .body("branches[3].size.size", equalTo("+0.50"))
                .body("branches[3].largestHole.certainUpTo.nm", equalTo(77_402_186));

        post("/api/match", """
                        {"engine":"OSTRAVEL-4","unit":"mm","condition":"worn","date":"2026-03-02","temperature":20,
                         "presentSize":{"size":"standard","knownFrom":"crown stamp"},"cylinders":[
                         {"cylinder":"1","diameter":77.402%s},{"cylinder":"2","diameter":77.21},
                         {"cylinder":"3","diameter":77.21},{"cylinder":"4","diameter":77.21}]}""".formatted(lastDigits))
                .statusCode(200)
                .body("sizes.find { it.size.size == '+0.50' }.certainty", equalTo(certainty));
    }

    /**
     * A record holds at 20 °C, and a stamp is no reading: only what was read and nobody said how warm is taken as 20 ± 5 °C, a piston too
     * whose hole it was told of.
     */
    @ParameterizedTest(name = "{0}, temperature told {1}: cautioned {2}")
    @CsvSource(delimiter = '|', textBlock = """
            "lastFinish": 77.21                                                         | false | false
            "findings": [{"kind": "scored"}]                                            | false | false
            "diameter": 77.25                                                           | false | true
            "diameter": 77.25                                                           | true  | false
            "unwornWall": 77.21                                                         | false | true
            "unwornWall": 77.21                                                         | true  | false
            "wallReach": {"radius": 38.65, "fromBarAxis": true}                         | false | true
            "presentPiston": {"number": "NH-OS4-000", "diameter": 77.165}               | false | true
            "presentPiston": {"number": "NH-OS4-000", "diameter": 77.165}               | true  | true
            """)
    void whatWasReadAtATemperatureThatNobodyStatedIsCautioned(String told, boolean stated, boolean cautioned) {
        String body = """
                {"engine":"OSTRAVEL-4","stamp":"STD","date":"2026-03-02"%s,"cylinders":[
                 {"cylinder":"1",%s},{"cylinder":"2"},{"cylinder":"3"},{"cylinder":"4"}]}""".formatted(stated ? ",\"temperature\":20" : "", told);

        post("/api/estimate", body)
                .statusCode(200)
                .body("cautions.any { it.startsWith('No temperature was stated') }", equalTo(cautioned));
    }

    @ParameterizedTest(name = "{0} on {1}")
    @CsvSource(delimiter = '|', textBlock = """
            1   | OSTRAVEL-4 | +1.00 or +0.25
            020 | OSTRAVEL-4 | standard, +0.25, +0.50, +0.75 or +1.00
            75  | SELVARRE-3 | standard, +0.25, +0.50 or +1.00
            3   | SELVARRE-3 | standard, +0.25, +0.50 or +1.00
            """)
    void aStampThatIsNotClearIsAskedBack(String stamp, String engine, String sizes) {
        estimate(engine, stamp)
                .statusCode(422)
                .body("type", equalTo("/problems/unclear-stamp"))
                .body("errors[0].pointer", equalTo("/stamp"))
                .body("errors[0].limit", equalTo(sizes));
    }
}
