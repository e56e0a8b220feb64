package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.List;
import org.borewright.kit.caution.Caution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A survey names what it was read with: a gauge of the register, one of its own, or none. */
@QuarkusTest
class GaugeRegisterTest {

    /**
     * A hole of 53.720 mm in a sleeve of α 15 × 10⁻⁶ /K at 20 °C. U by hand: 2·√((U/2)² + resolution²/12 + repeatability² + 805.8²) nm,
     * with 2326.1 in place of 805.8 where no temperature is stated, and 625.7 for a ring of 53.600 mm at 22 °C (JCGM 100, 5.1.2).
     */
    @ParameterizedTest(name = "{0}, temperature {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "null                                                  | 20   | 5000  | common practice | 1000  | common practice | 5285 | gauge",
                "null                                                  | null | 5000  | common practice | 1000  | common practice | 6854 | gauge",
                "{'uncertainty': 0.003}                                | null | 3000  | request         | 1000  | common practice | 5566 | temperature",
                "{'name': 'BG-1'}                                      | 20   | 4000  | register        | 1000  | register        | 4789 | gauge",
                "{'name': 'BG-1', 'ring': {'size': 53.6, 'temperature': 22}} | 20 | 4000 | register     | 1000  | register        | 4950 | gauge",
                "{'name': 'BG-2'}                                      | 20   | 12000 | register        | 10000 | register        | 13414 | gauge",
                "{'name': 'BG-3'}                                      | 20   | 5080  | register        | 2540  | register        | 6084 | gauge",
                "{'name': 'BG-4'}                                      | 20   | 5000  | common practice | 1000  | register        | 5285 | gauge",
                "{'name': 'BG-1', 'kind': 'bore gauge', 'uncertainty': 0.004, 'due': '2027-02-08'} | 20 | 4000 | register | 1000 | register | 4789 | gauge",
                "{'name': 'Bench 2', 'uncertainty': 0.008}             | 20   | 8000  | request         | 1000  | common practice | 8182 | gauge",
                "{'name': 'Bench 2', 'resolution': 0.01}               | 20   | 5000  | common practice | 10000 | request         | 7806 | resolution",
                "{'uncertainty': 0.008, 'resolution': 0.01}            | 20   | 8000  | request         | 10000 | request         | 9997 | gauge",
            })
    void figuresComeFromTheRegisterElseFromTheRequestElseFromCommonPractice(
            String gauge,
            String temperature,
            int uncertainty,
            String uncertaintySource,
            int resolution,
            String resolutionSource,
            int ofTheHole,
            String mattersMost) {
        JsonPath match = match(gauge, temperature, "2026-03-02");

        assertThat(match.getInt("gauge.uncertainty.nm")).isEqualTo(uncertainty);
        assertThat(match.getString("gauge.uncertaintySource")).isEqualTo(uncertaintySource);
        assertThat(match.getInt("gauge.resolution.nm")).isEqualTo(resolution);
        assertThat(match.getString("gauge.resolutionSource")).isEqualTo(resolutionSource);
        assertThat(match.getInt("cylinders[0].uncertainty.nm")).isEqualTo(ofTheHole);
        assertThat(match.getString("cylinders[0].budget.mattersMost")).isEqualTo(mattersMost);
        assertThat(cautions(match).contains(Caution.GAUGE_NOT_STATED.text()))
                .isEqualTo(uncertaintySource.equals("common practice"));
    }

    @ParameterizedTest(name = "{0} on {1}")
    @CsvSource({
        "BG-1, 2027-02-08, false",
        "BG-1, 2027-02-09, true",
        "BG-2, 2025-09-15, false",
        "BG-2, 2025-09-16, true",
        "BG-4, 2026-03-02, false",
    })
    void aGaugeOfTheRegisterIsOverdueFromTheDayAfterItsLast(String name, String day, boolean overdue) {
        JsonPath match = match("{'name': '%s'}".formatted(name), "20", day);

        assertThat(cautions(match).contains(Caution.CALIBRATION_OVERDUE.text())).isEqualTo(overdue);
    }

    /** 0.004 mm lies between 0.00015 and 0.00016 in, and an inch takes five decimals; the register keeps its own figure. */
    @ParameterizedTest
    @CsvSource({"0.00014, 422", "0.00015, 200", "0.00016, 200", "0.00017, 422"})
    void anInchAgreesWithTheRegisterAsNearAsItCanBeTyped(String uncertainty, int status) {
        String body = body("{'name': 'BG-1', 'uncertainty': %s}".formatted(uncertainty), "20", "2026-03-02")
                .replace("\"mm\"", "\"in\"")
                .replace("53.720", "2.1150");
        JsonPath answer = given().contentType("application/json")
                .body(body)
                .post("/api/match")
                .then()
                .statusCode(status)
                .extract()
                .jsonPath();

        if (status == 200) {
            assertThat(answer.getInt("gauge.uncertainty.nm")).isEqualTo(4000);
        } else {
            assertThat(answer.getString("errors[0].limit")).isEqualTo("the register says 0.000158 in");
        }
    }

    @Test
    void everyFigureThatDiffersIsTold() {
        List<String> places = given().contentType("application/json")
                .body(body(
                        "{'name': 'BG-1', 'kind': 'micrometer', 'uncertainty': 0.001, 'resolution': 0.001, 'due': '2028-01-01'}",
                        "20",
                        "2026-03-02"))
                .post("/api/match")
                .then()
                .statusCode(422)
                .extract()
                .path("errors.pointer");

        assertThat(places).containsExactly("/gauge/kind", "/gauge/uncertainty", "/gauge/due");
    }

    private static List<String> cautions(JsonPath match) {
        return match.getList("cautions");
    }

    private static JsonPath match(String gauge, String temperature, String day) {
        return given().contentType("application/json")
                .body(body(gauge, temperature, day))
                .post("/api/match")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private static String body(String gauge, String temperature, String day) {
        return """
                {"engine": "HALVERN-131", "unit": "mm", "condition": "worn", "date": "%s", "temperature": %s,
                 "presentSize": {"size": "standard", "knownFrom": "record"}, "gauge": %s,
                 "cylinders": [{"cylinder": "1", "diameter": 53.720}]}""".formatted(day, temperature, gauge.replace('\'', '"'));
    }
}
