package org.borewright.api.lookup.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.api.lookup.Counter.answer;
import static org.borewright.api.lookup.Counter.column;
import static org.borewright.api.lookup.Counter.lines;
import static org.borewright.api.lookup.Counter.refusal;
import static org.borewright.api.lookup.Counter.texts;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The register of gauges is looked up, and held against the file it was loaded from. */
@QuarkusTest
class GaugeLookupTest {

    @Test
    void theRegisterListsEveryGaugeByName() {
        assertThat(texts(answer("/api/gauges").path("gauges"), "name"))
                .isEqualTo(column("gauges.csv", "name").sorted().toList());
    }

    /** What is not known of a gauge is left out; the usual U of its kind is shown as what it is. */
    @Test
    void everyGaugeIsWorthWhatTheFileSays() {
        for (NamedCsvRecord line : lines("gauges.csv")) {
            JsonNode gauge = answer("/api/gauges/" + line.getField("name")).path("gauge");
            boolean calibrated = !line.getField("uncertainty_mm").isEmpty();

            assertThat(gauge.path("kind").asText()).isEqualTo(line.getField("kind"));
            isShown(line.getField("resolution_mm"), gauge.path("resolution").path("value"));
            isShown(
                    calibrated ? line.getField("uncertainty_mm") : "0.005",
                    gauge.path("uncertainty").path("value"));
            isShown(
                    line.getField("repeatability_mm"),
                    gauge.path("repeatability").path("value"));
            assertThat(gauge.path("uncertaintySource").asText()).isEqualTo(calibrated ? "register" : "common practice");
            assertThat(gauge.path("resolutionSource").asText()).isEqualTo("register");
            assertThat(gauge.path("calibratedOn").asText()).isEqualTo(line.getField("calibrated_on"));
            assertThat(gauge.path("due").asText()).isEqualTo(line.getField("due"));
        }
    }

    private static void isShown(String millimetres, JsonNode value) {
        if (millimetres.isEmpty()) {
            assertThat(value.isMissingNode()).isTrue();
        } else {
            assertThat(value.decimalValue()).isEqualByComparingTo(new BigDecimal(millimetres));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "bg-2, 'Did you mean BG-2, BG-1 or BG-3?'",
        "MIC1, Did you mean MIC-1?",
        "Bench%209, 'Look the gauge up at /api/gauges, or state in the request what it is worth.'",
    })
    void aNameThatIsNotInTheRegisterIsAnsweredWithTheNearOnes(String name, String wayOut) {
        JsonNode refusal = refusal("/api/gauges/" + name, 404);

        assertThat(refusal.path("type").asText()).isEqualTo("/problems/unknown-gauge");
        assertThat(refusal.path("wayOut").asText()).isEqualTo(wayOut);
    }
}
