package org.borewright.scenario;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A note with a slip in it, sent, asked about and answered over real HTTP. */
@QuarkusTest
class QueriedReadingsScenarioTest {

    private static final BigDecimal INCH = new BigDecimal("25.4");

    /** Depths 0.5, 1 and 2 in. */
    private static final String DEPTHS = "0.5 1 2";

    private static ValidatableResponse match(String unit, String left, String right, String besides) {
        return given().contentType("application/json")
                .body("""
                        {"engine":"HALVERN-T2","unit":"%s","condition":"worn","date":"2026-03-02","temperature":20,
                         "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[
                         {"cylinder":"left","grid":%s%s},{"cylinder":"right","grid":%s}]}""".formatted(unit, grid(left, unit), besides, grid(right, unit)))
                .post("/api/match")
                .then()
                .statusCode(200);
    }

    /** Rows in inches from the deck down, parted by a slash: thrust, then pin; in millimetres each figure is 25.4 times as much. */
    private static String grid(String rows, String unit) {
        String readings = Arrays.stream(rows.split("/"))
                .map(row -> "[" + figures(row, unit) + "]")
                .collect(Collectors.joining(","));
        return "{\"depths\":[%s],\"axes\":[\"thrust\",\"pin\"],\"readings\":[%s]}"
                .formatted(figures(DEPTHS, unit), readings);
    }

    private static String figures(String inches, String unit) {
        return Arrays.stream(inches.strip().split(" +"))
                .map(BigDecimal::new)
                .map(figure -> unit.equals("in") ? figure : figure.multiply(INCH))
                .map(BigDecimal::toPlainString)
                .collect(Collectors.joining(","));
    }

    private static final String SOUND = "2.3835 2.3830 / 2.3828 2.3826 / 2.3820 2.3818";
    private static final String OTHER = "2.3834 2.3830 / 2.3827 2.3826 / 2.3821 2.3818";

    @Test
    void aSlipIsAskedAboutByItsPlaceAndAnsweredByStandingByIt() {
        String slip = "2.3835 2.3830 / 2.3928 2.3826 / 2.3820 2.3818";

        match("in", slip, OTHER, "")
                .body("verdict", equalTo("no certain size"))
                .body("size", nullValue())
                .body("says", containsString("(2.3928 in at depth 1.000 in, thrust)"))
                .body("holds[0].next", containsString("readingsChecked"))
                .body("holds[0].cylinders", equalTo(List.of("left")))
                .body("holds[0].queries", hasSize(1))
                .body("holds[0].queries[0].says", equalTo("far from every reading beside it"))
                .body("holds[0].queries[0].readings.depth.value", equalTo(List.of(1.0f)))
                .body("holds[0].queries[0].readings.axis", equalTo(List.of("thrust")))
                .body("holds[0].queries[0].readings.diameter.value", equalTo(List.of(2.3928f)))
                .body("holds[0].queries[0].beside.diameter.value", equalTo(List.of(2.3835f, 2.3820f, 2.3826f)))
                .body("cylinders[0].stoodOn", equalTo("queried grid"))
                .body("cylinders[0].largest", nullValue());
        match("in", slip, OTHER, ",\"readingsChecked\":true")
                .body("holds.findAll { it.queries != null }", hasSize(0))
                .body("cylinders[0].stoodOn", equalTo("grid"))
                .body("cylinders[0].largest.nm", equalTo(60_777_120));
    }

    /** Source: 1 in = 25.4 mm exactly. A reading lies 0.0059 in = 0.149 86 mm beyond the largest beside it, then 0.005 91 in = 0.150 114 mm. */
    @ParameterizedTest(name = "{0} beside {1}: {2}")
    @CsvSource({
        "2.3835 2.3830 / 2.38940 2.3826 / 2.3820 2.3818, " + OTHER + ", 0",
        "2.3835 2.3830 / 2.38941 2.3826 / 2.3820 2.3818, " + OTHER + ", 1",
        "2.3840 2.3820 / 2.3815 2.3830 / 2.3835 2.3815, " + OTHER + ", 1",
        SOUND + ", " + SOUND + ", 2",
        SOUND + ", " + OTHER + ", 0",
    })
    void inchesAndMillimetresAreQueriedAlike(String left, String right, int cylinders) {
        ValidatableResponse in = match("in", left, right, "");
        ValidatableResponse mm = match("mm", left, right, "");

        assertThat(in.extract().<List<Object>>path("holds.findAll { it.queries != null }"))
                .hasSize(cylinders);
        for (String path : new String[] {
            "verdict",
            "size",
            "sizes.certainty",
            "holds.reason",
            "holds.cylinders",
            "holds.queries.says",
            "holds.queries.sameAs",
            "holds.queries.readings.diameter.nm",
            "holds.queries.beside.depth.nm"
        }) {
            assertThat(mm.extract().<Object>path(path))
                    .as(path)
                    .isEqualTo(in.extract().<Object>path(path));
        }
    }
}
