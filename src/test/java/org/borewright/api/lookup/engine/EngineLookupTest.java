package org.borewright.api.lookup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.borewright.api.lookup.Counter.answer;
import static org.borewright.api.lookup.Counter.ask;
import static org.borewright.api.lookup.Counter.column;
import static org.borewright.api.lookup.Counter.escaped;
import static org.borewright.api.lookup.Counter.lines;
import static org.borewright.api.lookup.Counter.refusal;
import static org.borewright.api.lookup.Counter.texts;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** One engine with all that is asked of it, held against the files it was loaded from. */
@QuarkusTest
class EngineLookupTest {

    static Stream<String> engines() {
        return column("engines.csv", "engine");
    }

    private static List<NamedCsvRecord> linesOf(String file, String engine) {
        return lines(file).stream()
                .filter(line -> line.getField("engine").equals(engine))
                .toList();
    }

    private static List<String> columnOf(String file, String engine, String column) {
        return linesOf(file, engine).stream().map(line -> line.getField(column)).toList();
    }

    /** The millimetres of a cell as the nanometres of an answer. */
    private static void isLength(JsonNode shown, String millimetres) {
        assertThat(shown.path("nm").decimalValue()).isEqualByComparingTo(new BigDecimal(millimetres).movePointRight(6));
    }

    @ParameterizedTest
    @MethodSource("engines")
    void everyEngineIsShownAsItsFilesSay(String code) {
        JsonNode engine = answer("/api/engines/" + code);
        NamedCsvRecord line = linesOf("engines.csv", code).get(0);

        for (String text :
                List.of("engine", "maker", "model", "layout", "construction", "surface", "steps", "strokes")) {
            assertThat(engine.path(text).asText()).isEqualTo(line.getField(text));
        }
        assertThat(engine.path("mayBeBored").booleanValue())
                .isEqualTo(!line.getField("construction").equals("plated"));
        assertThat(engine.path("separateBarrels").booleanValue())
                .isEqualTo(List.of("iron barrel", "sleeved aluminium barrel", "plated")
                                .contains(line.getField("construction"))
                        && linesOf("cylinders.csv", code).stream()
                                .allMatch(hole ->
                                        hole.getField("pitch_to_next_mm").isEmpty()));
        isLength(engine.at("/bore/nominal"), line.getField("bore_mm"));
        isLength(engine.at("/bore/asNew/least"), line.getField("new_bore_least_mm"));
        isLength(engine.at("/bore/asNew/greatest"), line.getField("new_bore_greatest_mm"));
        assertThat(engine.at("/bore/labelNames").asText()).isEqualTo(line.getField("label_names"));
        isLength(engine.at("/deck/stroke"), line.getField("stroke_mm"));
        isLength(engine.at("/deck/rod"), line.getField("rod_mm"));
        isLength(engine.at("/deck/pistonToHead/least"), line.getField("piston_to_head_least_mm"));
        isLength(engine.at("/limits/wear"), line.getField("wear_allowance_mm"));
        isLength(engine.at("/limits/taper"), line.getField("taper_allowance_mm"));
        isLength(engine.at("/limits/outOfRound"), line.getField("out_of_round_allowance_mm"));
        isLength(engine.at("/limits/deckFlatness"), line.getField("deck_flatness_mm"));
        isLength(engine.at("/limits/skimGreatest"), line.getField("skim_greatest_mm"));
        assertThat(engine.at("/limits/massSpread").decimalValue()).isEqualByComparingTo(line.getField("mass_spread_g"));
    }

    @ParameterizedTest
    @MethodSource("engines")
    void itsHolesAndSizesStandInTheirOrder(String code) {
        JsonNode engine = answer("/api/engines/" + code);
        assertThat(texts(engine.path("cylinders"), "cylinder")).isEqualTo(columnOf("cylinders.csv", code, "cylinder"));
        assertThat(texts(engine.path("cylinders"), "hand")).isEqualTo(columnOf("cylinders.csv", code, "hand"));

        List<String> sizes = columnOf("sizes.csv", code, "size");
        assertThat(texts(engine.path("sizes"), "size")).isEqualTo(sizes);
        List<String> oversizes = columnOf("sizes.csv", code, "oversize_mm");
        List<String> furtherWork = columnOf("sizes.csv", code, "further_work");
        List<String> made = columnOf("piston_designs.csv", code, "design").stream()
                .flatMap(design -> lines("pistons.csv").stream()
                        .filter(piston -> piston.getField("design").equals(design)))
                .map(piston -> piston.getField("size"))
                .toList();
        for (int i = 0; i < sizes.size(); i++) {
            JsonNode size = engine.path("sizes").get(i);
            isLength(size.path("oversize"), oversizes.get(i));
            assertThat(size.path("furtherWork").booleanValue())
                    .isEqualTo(furtherWork.get(i).equals("yes"));
            assertThat(size.path("made").booleanValue()).as(sizes.get(i)).isEqualTo(made.contains(sizes.get(i)));
            assertThat(size.at("/newBore/least/nm").longValue()
                            - size.at("/oversize/nm").longValue())
                    .isEqualTo(engine.at("/bore/asNew/least/nm").longValue());
        }
    }

    @ParameterizedTest
    @MethodSource("engines")
    void itsFastenersAreTightenedInStages(String code) {
        JsonNode torques = answer("/api/engines/" + code).path("torques");
        assertThat(texts(torques, "fastener")).isEqualTo(columnOf("fasteners.csv", code, "fastener"));
        for (JsonNode torque : torques) {
            List<NamedCsvRecord> stages = linesOf("torque_stages.csv", code).stream()
                    .filter(stage -> stage.getField("fastener")
                            .equals(torque.path("fastener").asText()))
                    .toList();
            assertThat(torque.path("stages")).hasSameSizeAs(stages).isNotEmpty();
            for (int i = 0; i < stages.size(); i++) {
                JsonNode stage = torque.path("stages").get(i);
                if (stages.get(i).getField("torque_Nm").isEmpty()) {
                    assertThat(stage.path("angleDegrees").asText())
                            .isEqualTo(stages.get(i).getField("angle_deg"));
                } else {
                    assertThat(stage.at("/torque/N·m").decimalValue())
                            .isEqualByComparingTo(stages.get(i).getField("torque_Nm"));
                    // 1 lbf·ft = 1.35581795 N·m, rounded; shown to a tenth.
                    assertThat(stage.at("/torque/lbf·ft").doubleValue())
                            .isCloseTo(stage.at("/torque/N·m").doubleValue() / 1.35581795, offset(0.0501));
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "ostravel-4 | OSTRAVEL-4 | Did you mean OSTRAVEL-4 or OSTRAVEL-6?",
                "OSTRAVLE-4 | OSTRAVEL-4 | Did you mean OSTRAVEL-4 or OSTRAVEL-6?",
                "Estuary 1.6 | OSTRAVEL-4 | Did you mean OSTRAVEL-4?",
                "halvern t2 | HALVERN-T2 | Did you mean HALVERN-T2 or HALVERN-131?",
                "TORRESK | TORRESK-F4 | Did you mean TORRESK-F4 or TORRESK-P2?",
                "KETTLE | nothing | Look the engine up at /api/engines.",
                "/ | nothing | Look the engine up at /api/engines.",
                "%00 | nothing | Look the engine up at /api/engines.",
                "{engine} | nothing | Look the engine up at /api/engines.",
            })
    void anEngineThatIsNotThereIsRefusedWithTheNearNames(String typed, String suggestion, String wayOut) {
        JsonNode problem = refusal("/api/engines/" + escaped(typed), 404);
        assertThat(problem.path("type").asText()).isEqualTo("/problems/unknown-engine");
        assertThat(problem.path("errors")).hasSize(1);
        JsonNode error = problem.at("/errors/0");
        assertThat(error.path("pointer").asText()).isEqualTo("engine");
        assertThat(error.path("value").asText()).isEqualTo(typed);
        assertThat(error.path("wayOut").asText()).isEqualTo(wayOut);
        assertThat(error.at("/suggestion/value").asText("nothing")).isEqualTo(suggestion);
    }

    @Test
    void aNameTooLongToRepeatIsCutShort() {
        JsonNode problem = refusal("/api/engines/" + "x".repeat(1000), 404);
        assertThat(problem.at("/errors/0/value").asText()).isEqualTo("x".repeat(60) + "…");
    }

    @Test
    void anyOtherParameterThanTheUnitIsRefused() {
        JsonNode problem = refusal("/api/engines/NONE-SUCH?unit=cm&units=mm&page=1", 400);
        assertThat(texts(problem.path("errors"), "pointer")).containsExactly("unit", "page", "units");
        assertThat(problem.at("/errors/2/suggestion/value").asText()).isEqualTo("unit");
    }

    @Test
    void theSameQuestionGetsTheSameBytes() {
        assertThat(ask("/api/engines/KOVARDA-V11?unit=in").asByteArray())
                .isEqualTo(ask("/api/engines/KOVARDA-V11?unit=in").asByteArray());
    }
}
