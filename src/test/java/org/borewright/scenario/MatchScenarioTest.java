package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ExtractableResponse;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.time.LocalDate;
import java.util.List;
import org.borewright.kit.caution.Caution;
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
    void aWornFourGoesToOneSizeAndAProbedWallCouldSaveAStep() {
        match(WORN_FOUR)
                .statusCode(200)
                .body("verdict", equalTo("serves"))
                .body("size.size", equalTo("+0.50"))
                .body("couldSave.size.size", equalTo("+0.25"))
                .body("couldSave.readings.cylinder", equalTo(List.of("1", "2", "3", "4")))
                .body("couldSave.readings.within.nm", equalTo(List.of(38_677_187, 38_677_186, 38_677_187)))
                .body("couldSave.readings[1].within", nullValue())
                .body("couldSave.readings[1].withinFromBarAxis.nm", equalTo(38_697_186))
                .body("cylinders[1].cleanUp.worst.nm", equalTo(77_580_000))
                .body("bill.complete", equalTo(true))
                .body("bill.lines.number", hasItem("OVS4-GK"));
    }

    /** 2·(38.67 + 0.02) is the worst of a probed wall, 2·(38.67 − 0.02) from where on the bar may reach it; no other hole has the latter. */
    @Test
    void ofAProbedWallIsToldWhatItRulesOut() {
        match(
                        WORN_FOUR.replace(
                                "\"diameter\":77.310}",
                                "\"diameter\":77.310,\"wallReach\":{\"radius\":38.670,\"fromBarAxis\":false,\"uncertainty\":0.02}}"))
                .statusCode(200)
                .body("cylinders[3].cleanUp.worst.nm", equalTo(77_380_000))
                .body("cylinders[3].cleanUp.reach.nm", equalTo(77_300_000))
                .body("cylinders[3].cleanUp.guard.nm", greaterThan(40_000))
                .body("cylinders[3].cleanUp.budget.gauge.nm", equalTo(10_000))
                .body("cylinders[3].budget.gauge.nm", equalTo(2_500))
                .body("cylinders[2].cleanUp.guard.nm", lessThan(11_000))
                .body("cylinders[2].cleanUp.budget", nullValue())
                .body("cylinders.cleanUp.reach.nm", equalTo(List.of(77_300_000)));
    }

    /** Two makers' +0.50: 61.800 on a later day, 61.855 at once. The shelf decides the day, not the metal. */
    @Test
    void ofTwoMakersAtOneSizeTheOneThatTakesLessMetalGoesInThoughLater() {
        ExtractableResponse<Response> answer = match("""
                {"engine":"TORRESK-F4","unit":"mm","condition":"worn","date":"2026-03-02","temperature":20,
                 "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[
                 {"cylinder":"1","diameter":61.400},{"cylinder":"2","diameter":61.400},
                 {"cylinder":"3","diameter":61.400},{"cylinder":"4","diameter":61.400}]}""")
                .statusCode(200)
                .body("size.size", equalTo("+0.50"))
                .body("size.maker", equalTo("Norheim"))
                .extract();

        String row = "sizes.find { it.size.size == '+0.50' && it.size.maker == '%s' }.%s";
        assertThat(answer.path(String.format(row, "Norheim", "finish.nm")).toString())
                .isEqualTo("61800000");
        assertThat(answer.path(String.format(row, "Kelvarn", "finish.nm")).toString())
                .isEqualTo("61855000");
        assertThat(LocalDate.parse(answer.path(String.format(row, "Norheim", "kit.date"))))
                .isAfter(LocalDate.parse(answer.path(String.format(row, "Kelvarn", "kit.date"))));
    }

    /**
     * A sleeve in aluminium, α 15 ± 3 × 10⁻⁶ /K, read at 26 °C with a gauge zeroed on a ring as warm: (53.720 + 53.600 · 11.5e-6 · 6) / (1 + 15e-6 · 6),
     * and the terms of its uncertainty, worked out by hand.
     */
    @Test
    void aWarmSleeveInAluminiumIsTurnedBackToTwentyDegreesAndSaysHowWellItIsKnown() {
        match("""
                {"engine":"HALVERN-131","unit":"mm","condition":"worn","date":"2026-03-02","temperature":26,
                 "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[{"cylinder":"1","diameter":53.720}],
                 "gauge":{"kind":"bore gauge","name":"bench 2","uncertainty":0.005,"calibratedOn":"2025-03-01","due":"2026-03-01",
                 "ring":{"size":53.600,"temperature":26}}}""")
                .statusCode(200)
                .body("gauge.name", equalTo("bench 2"))
                .body("gauge.uncertaintySource", equalTo("request"))
                .body("gauge.resolutionSource", equalTo("common practice"))
                .body("gauge.ringGrowth.nm", equalTo(3698))
                .body("cylinders[0].largestAsRead.nm", equalTo(53_720_000))
                .body("cylinders[0].largest.nm", equalTo(53_718_864))
                .body("cylinders[0].budget.gauge.nm", equalTo(2500))
                .body("cylinders[0].budget.resolution.nm", equalTo(289))
                .body("cylinders[0].budget.temperature.nm", equalTo(806))
                .body("cylinders[0].budget.expansion.nm", equalTo(967))
                .body("cylinders[0].budget.ring.nm", equalTo(696))
                .body("cylinders[0].budget.combined.nm", equalTo(2899))
                .body("cylinders[0].uncertainty.nm", equalTo(5797))
                .body("cylinders[0].budget.mattersMost", equalTo("gauge"))
                .body("cautions", hasItem(Caution.SLEEVE_IN_ALUMINIUM.text()))
                .body("cautions", hasItem(Caution.CALIBRATION_OVERDUE.text()))
                .body("cautions", hasItem(Caution.TEMPERATURE_FAR.text()));
    }

    @Test
    void theSameRequestGivesTheSameBytes() {
        byte[] first = match(WORN_FOUR).extract().asByteArray();

        assertThat(match(WORN_FOUR).extract().asByteArray()).isEqualTo(first);
    }

    /** Source: 1 in = 25.4 mm exactly, 68 °F = 20 °C exactly. */
    @ParameterizedTest(name = "largest {0} in = {1} mm")
    @CsvSource({"3.2942, 83.67268", "3.2990, 83.7946", "3.3050, 83.947", "3.3100, 84.074"})
    void inchesAndMillimetresAgree(String inches, String millimetres) {
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

    /** Left fits +0.25, right +0.50. Asked for by name, the size that brings them together takes the work and the price it was given with. */
    @Test
    void theSizeThatBringsHolesTogetherSaysWhatItTakes() {
        String holes = """
                {"engine":"HALVERN-T2","unit":"mm","condition":"finished","date":"2026-03-02","temperature":20,%s
                 "cylinders":[{"cylinder":"left","diameter":60.700},{"cylinder":"right","diameter":60.950}]}""";
        ValidatableResponse apart = match(holes.formatted("")).body("operations.lines", empty());
        String size = apart.extract().path("bringsTogether.size");

        ValidatableResponse asked = match(holes.formatted("\"askedSize\":\"%s\",".formatted(size)))
                .body("size.size", equalTo(size))
                .body("operations.lines.find {it.operation == 'bore'}.quantity", equalTo(2));
        for (String path : new String[] {"operations", "total"}) {
            assertThat(apart.extract().<Object>path("bringsTogether." + path))
                    .as(path)
                    .isNotNull()
                    .isEqualTo(asked.extract().<Object>path(path));
        }
    }

    @Test
    void aCrackedCylinderGetsNoKit() {
        match(WORN_FOUR.replace("\"diameter\":77.310}", "\"diameter\":77.310,\"findings\":[{\"kind\":\"cracked\"}]}"))
                .statusCode(200)
                .body("verdict", equalTo("refer to a specialist"))
                .body("holds[0].cylinders", equalTo(List.of("4")));
    }

    /** Each hole gives what lies beyond its own smallest size: the first could go to +0.25 by itself, though the second needs +0.50. */
    @Test
    void whatEachHoleGivesForTheHardestIsReckonedFromItsOwnSize() {
        given().contentType("application/json")
                .body("""
                        {"engine":"TORRESK-F4","unit":"mm","condition":"worn","temperature":20,
                         "presentSize":{"size":"standard","knownFrom":"record"},
                         "cylinders":[{"cylinder":"1","diameter":61.350},{"cylinder":"2","diameter":61.430},
                          {"cylinder":"3","diameter":61.560},{"cylinder":"4","diameter":61.560}]}""")
                .post("/api/match")
                .then()
                .statusCode(200)
                .body("size.size", equalTo("+0.75"))
                .body("hardest.cylinders", equalTo(List.of("3", "4")))
                .body("hardest.othersAlone.size", equalTo("+0.50"))
                .body("hardest.losses.cylinder", equalTo(List.of("1", "2")))
                .body("hardest.losses.metal.nm", equalTo(List.of(500_000, 250_000)));
    }
}
