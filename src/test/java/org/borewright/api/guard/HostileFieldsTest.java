package org.borewright.api.guard;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.borewright.api.match.request.SampleRequest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A request that uses every field, with a hostile value at each of its places in turn: the fault is told at that place. */
@QuarkusTest
class HostileFieldsTest {

    /** A gauge is called what the shop calls it. */
    private static final List<String> ANY_TEXT =
            List.of("/gauge/name", "/pistonGauge/name", "/cylinders/1/presentPiston/gauge/name");

    private static final String MARK = "\"@\"";

    private static final String PRESENT_PISTON = """
            {"number": "NH-OS4-000", "diameter": 77.155, "gauge": {"kind": "micrometer", "name": "No 5", "uncertainty": 0.003,
             "resolution": 0.001, "repeatability": 0.001, "calibratedOn": "2025-11-03", "due": "2026-11-03",
             "ring": {"size": 75, "temperature": 22, "expansion": 11.5, "expansionUncertainty": 1}}}""";

    @ParameterizedTest
    @EnumSource
    void theRequestThatIsSpoiltBelowIsAnswered(Question question) throws IOException {
        try (Wire wire = Wire.open()) {
            assertThat(Refusal.status(
                            wire.post(question.path, question.whole().text()).answer()))
                    .isEqualTo(200);
        }
    }

    /** A misspelt field is answered with all there are, so that one added later is missed here. */
    @ParameterizedTest
    @EnumSource
    void theRequestThatIsSpoiltBelowUsesEveryField(Question question) throws IOException {
        SortedMap<String, JsonNode> places = question.places();
        List<String> used =
                places.keySet().stream().map(HostileFieldsTest::ofAny).toList();
        try (Wire wire = Wire.open()) {
            for (Map.Entry<String, JsonNode> place : places.entrySet()) {
                if (place.getValue().isObject()) {
                    String body = question.whole()
                            .with(place.getKey() + "/nobody-knows", "1")
                            .text();
                    String limit = Refusal.in(wire.post(question.path, body).answer())
                            .document()
                            .at("/errors/0/limit")
                            .textValue();
                    assertThat(limit).startsWith("known here: ");
                    assertThat(used)
                            .containsAll(Stream.of(limit.substring("known here: ".length())
                                            .split(", ", -1))
                                    .map(known -> ofAny(place.getKey() + "/" + known))
                                    .toList());
                }
            }
        }
    }

    /** Of one cylinder as of another. */
    private static String ofAny(String place) {
        return place.replaceAll("^/(cylinders|pistons)/\\d", "/$1/0");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"nobody-knows\":1}",
                "[[[]]]",
                "[null]",
                "[{\"a\":[{\"b\":[{}]}]}]",
                "\"\"",
                "\"\\u0000\"",
                "\"\\ud800\"",
                "\"\uD83D\uDCA5 \u202E\u0301 <script>'; --\"",
                "NaN",
                "Infinity",
                "-Infinity",
                "+INF",
                "-1e999",
                "1e2147483647",
                "1e2147483648",
                "1e-99999999999999",
                "0.0000000000000000000000000000000000001e-2147483647",
                "999999999999999999999999999999999999999999999999999999999999",
                "-9223372036854775809",
            })
    void aHostileValueIsRefusedAtItsPlace(String hostile) throws IOException {
        try (Wire wire = Wire.open()) {
            for (Question question : Question.values()) {
                for (String place : question.places().keySet()) {
                    if (!(ANY_TEXT.contains(place) && hostile.startsWith("\""))) {
                        isRefusedAt(wire, question, place, hostile);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "-Infinity",
                "+INF",
                "-INF",
                "1e2147483648",
                "99999999999999999999999999999999999999999"
            })
    void whatIsNoFigureIsNoTextEither(String hostile) throws IOException {
        try (Wire wire = Wire.open()) {
            for (Question question : Question.values()) {
                isNoText(wire, question, hostile);
            }
        }
    }

    private static void isNoText(Wire wire, Question question, String hostile) throws IOException {
        for (Map.Entry<String, JsonNode> place : question.places().entrySet()) {
            if (place.getValue().isTextual()) {
                JsonNode fault =
                        refusal(wire, question, place.getKey(), hostile).fault(place.getKey());
                assertThat(fault.path("value").textValue()).isEqualTo(hostile);
                assertThat(fault.path("reason").textValue())
                        // An axis is called thrust or pin, or is so many degrees.
                        .isIn(
                                "This is a figure that cannot be read where a text in quotes belongs.",
                                hostile + " is not a number.");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void yesIsNoAnswerButToYesOrNo(Question question) throws IOException {
        try (Wire wire = Wire.open()) {
            for (Map.Entry<String, JsonNode> place : question.places().entrySet()) {
                if (!place.getValue().isBoolean()) {
                    isRefusedAt(wire, question, place.getKey(), "true");
                }
            }
        }
    }

    private static void isRefusedAt(Wire wire, Question question, String place, String hostile) throws IOException {
        Refusal refusal = refusal(wire, question, place, hostile);
        assertThat(refusal.status()).isEqualTo(422);
        assertThat(refusal.pointers())
                .as("%s at %s: %s", hostile, place, refusal.document())
                .anyMatch(pointer -> pointer.startsWith(place));
    }

    private static Refusal refusal(Wire wire, Question question, String place, String hostile) throws IOException {
        String body = place.isEmpty()
                ? hostile
                : question.whole().with(place, MARK).text().replace(MARK, hostile);
        return Refusal.in(wire.post(question.path, body).answer());
    }

    private static void put(String place, JsonNode node, SortedMap<String, JsonNode> places) {
        places.put(place, node);
        node.properties().forEach(member -> put(place + "/" + member.getKey(), member.getValue(), places));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            put(place + "/" + i, node.get(i), places);
        }
    }

    /** A question that uses every field. */
    enum Question {
        MATCH("/api/match", "/api/match/ostravel-4-worn.json") {
            @Override
            SampleRequest whole() {
                return super.whole()
                        .with("/temperatureUnit", "\"C\"")
                        .with("/pistonTemperature", "21")
                        .with("/deckFlatness", "0.04")
                        .with("/deckFlatnessUncertainty", "0.005")
                        .with("/deckSkim", "0.05")
                        .with("/skimmedBefore", "0.1")
                        .with("/askedSize", "\"+0.75\"")
                        .with("/gauge/kind", "\"bore gauge\"")
                        .with("/gauge/name", "\"No 2\"")
                        .with("/gauge/repeatability", "0.001")
                        .with("/gauge/calibratedOn", "\"2025-11-03\"")
                        .with("/gauge/due", "\"2026-11-03\"")
                        .with(
                                "/gauge/ring",
                                "{\"size\": 77.2, \"temperature\": 22, \"expansion\": 11.5, \"expansionUncertainty\": 1}")
                        .with("/ringsFiled", "true")
                        .with("/cylinders/0/readingsChecked", "true")
                        .with("/cylinders/1/sleevedBefore", "false")
                        .with("/cylinders/1/sleeveOutside", "83")
                        .with("/cylinders/1/leastWall", "3.5")
                        .with("/cylinders/1/grooves", "\"good\"")
                        .with("/cylinders/1/ridge", "\"none\"")
                        .with("/cylinders/1/glaze", "\"broken\"")
                        .with("/cylinders/1/presentPiston", PRESENT_PISTON)
                        .with("/cylinders/2/presentPiston", "{\"design\": \"NORHEIM-OS4\"}");
            }
        },
        ESTIMATE("/api/estimate", "/api/match/ostravel-4-worn.json") {
            @Override
            SampleRequest whole() {
                return MATCH.whole()
                        .with("/ringsFiled", "nothing")
                        .with("/condition", "nothing")
                        .with("/presentSize", "nothing")
                        .with("/askedSize", "nothing")
                        .with("/stamp", "\"STD\"");
            }
        },
        BENCH("/api/bench", "/api/bench/kovarda-v11-pistons.json"),
        FINISH("/api/finish", "/api/bench/kovarda-v11-honed.json");

        private final String path;
        private final String file;

        Question(String path, String file) {
            this.path = path;
            this.file = file;
        }

        SampleRequest whole() {
            return SampleRequest.in(file);
        }

        /** Every place of the request with what stands there. */
        private SortedMap<String, JsonNode> places() throws IOException {
            SortedMap<String, JsonNode> places = new TreeMap<>();
            put("", new ObjectMapper().readTree(whole().text()), places);
            return places;
        }
    }
}
