package org.borewright.api.match.request;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class FaultsOfARequestTest {

    @Test
    void theRequestThatIsSpoiltBelowHoldsTogether() {
        match(SampleRequest.inlineFour().text()).then().statusCode(200);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/api/match/faults.csv", delimiter = '|', quoteCharacter = '`', commentCharacter = '#')
    void aFaultIsToldWithItsPlaceItsLimitAndAWayOut(ArgumentsAccessor row) {
        String place = row.getString(3);
        Response answer = match(SampleRequest.inlineFour()
                .with(row.getString(1), row.getString(2))
                .text());
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(422);
        assertThat(answer.contentType()).isEqualTo("application/problem+json");
        Map<String, Object> fault = faultAt(answer.jsonPath(), place);
        assertThat((String) fault.get("reason")).isNotBlank();
        assertThat((String) fault.get("wayOut")).isNotBlank();
        if (!row.getString(5).equals("nothing")) {
            assertThat((String) fault.get("limit")).contains(row.getString(5));
        }
        assertThat(suggestion(fault)).isEqualTo(row.getString(6));
        if (answer.jsonPath().getList("errors").size() == 1) {
            assertThat(answer.jsonPath().getString("type")).isEqualTo("/problems/" + row.getString(4));
        }
    }

    /** A limit that a fault names is itself believed. */
    @ParameterizedTest(name = "{1} at {0}")
    @CsvSource({
        "/cylinders/1/diameter, 77.1",
        "/cylinders/1/diameter, 78.745",
        "/cylinders/3/lastFinish, 77.1",
        "/cylinders/2/wallReach/radius, 38.55",
        "/cylinders/2/wallReach/radius, 39.3725",
        "/cylinders/2/wallReach/uncertainty, 0.5",
        "/gauge/uncertainty, 0.5",
    })
    void whatLiesOnALimitIsRead(String place, String figure) {
        match(SampleRequest.inlineFour().with(place, figure).text()).then().statusCode(200);
    }

    /** That another is missing follows from it. */
    @ParameterizedTest
    @ValueSource(strings = {"\"left\"", "\"1\"", "nothing", "2"})
    void aSlipInTheNameOfACylinderIsToldOnce(String name) {
        Response answer = match(
                SampleRequest.inlineFour().with("/cylinders/3/cylinder", name).text());

        assertThat(answer.jsonPath().getList("errors.pointer")).isEqualTo(List.of("/cylinders/3/cylinder"));
    }

    private static String suggestion(Map<String, Object> fault) {
        Map<?, ?> suggestion = (Map<?, ?>) fault.get("suggestion");
        return suggestion == null ? "nothing" : suggestion.get("value").toString();
    }

    private static Map<String, Object> faultAt(JsonPath problem, String pointer) {
        List<Map<String, Object>> errors = problem.getList("errors");
        List<Map<String, Object>> there = errors.stream()
                .filter(error -> error.get("pointer").equals(pointer))
                .toList();
        assertThat(there).as("%s in %s", pointer, errors).hasSize(1);
        return there.get(0);
    }

    private static Response match(String body) {
        return given().contentType("application/json").body(body).post("/api/match");
    }
}
