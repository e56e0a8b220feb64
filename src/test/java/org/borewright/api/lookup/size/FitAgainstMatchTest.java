package org.borewright.api.lookup.size;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.api.lookup.Counter.answer;
import static org.borewright.api.lookup.Counter.body;
import static org.borewright.api.lookup.Counter.column;
import static org.borewright.api.lookup.Counter.escaped;
import static org.borewright.api.lookup.Counter.texts;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the web store shows before a hole is measured is what the machinist is told when they are: for every size of every engine. */
@QuarkusTest
class FitAgainstMatchTest {

    static Stream<String> engines() {
        return column("engines.csv", "engine");
    }

    /** The match of an engine as it left the maker, every hole at the least of a new one. */
    private static JsonNode matchOf(String code) {
        JsonNode engine = answer("/api/engines/" + code);
        BigDecimal newBore = engine.at("/bore/asNew/least/nm").decimalValue().movePointLeft(6);
        String holes = texts(engine.path("cylinders"), "cylinder").stream()
                .map(name -> "{\"cylinder\":\"%s\",\"diameter\":%s}".formatted(name, newBore.toPlainString()))
                .collect(Collectors.joining(","));
        String request =
                "{\"engine\":\"%s\",\"unit\":\"mm\",\"condition\":\"worn\",\"date\":\"2026-03-02\",\"cylinders\":[%s]}"
                        .formatted(code, holes);
        return body(given().contentType("application/json").body(request).post("/api/match"), 200);
    }

    private static JsonNode fitOf(String code, String size) {
        return answer("/api/engines/" + code + "/sizes/" + escaped(size) + "/fit");
    }

    @ParameterizedTest
    @MethodSource("engines")
    void bothNameTheSameSizesPistonsAndReasons(String code) {
        JsonNode rows = matchOf(code).path("sizes");
        assertThat(texts(answer("/api/engines/" + code).path("sizes"), "size"))
                .isEqualTo(rows.valueStream()
                        .map(row -> row.at("/size/size").asText())
                        .distinct()
                        .toList());
        for (JsonNode row : rows) {
            JsonNode fit = fitOf(code, row.at("/size/size").asText());
            assertThat(fit.at("/oversize/nm")).isEqualTo(row.at("/oversize/nm"));
            assertThat(fit.path("rebuildsLeft")).isEqualTo(row.path("rebuildsLeft"));
            if (row.at("/size/design").isMissingNode()) {
                assertThat(fit.path("choices")).isEmpty();
                assertThat(texts(fit.path("blocks"), "says"))
                        .isEqualTo(texts(row.path("blocks"), "says"))
                        .isNotEmpty();
            } else {
                agree(choiceOf(fit, row.at("/size/design").asText()), row);
            }
        }
    }

    private static JsonNode choiceOf(JsonNode fit, String design) {
        return fit.path("choices")
                .valueStream()
                .filter(choice -> choice.path("design").asText().equals(design))
                .findFirst()
                .orElseThrow();
    }

    private static void agree(JsonNode choice, JsonNode row) {
        assertThat(choice.path("maker")).isEqualTo(row.at("/size/maker"));
        assertThat(choice.path("finish")).isEqualTo(row.path("finish"));
        assertThat(choice.path("largestFinish")).isEqualTo(row.path("largestFinish"));
        assertThat(texts(choice.path("blocks"), "says"))
                .as(row.toString())
                .isEqualTo(texts(row.path("blocks"), "says"));
        assertThat(choice.path("blocks").findValues("withdrawn"))
                .isEqualTo(row.path("blocks").findValues("withdrawn"));
        for (int i = 0; i < row.path("cylinders").size(); i++) {
            assertThat(choice.path("pistons").get(i).path("cylinder"))
                    .isEqualTo(row.path("cylinders").get(i).path("cylinder"));
            assertThat(texts(choice.path("pistons").get(i).path("numbers")))
                    .contains(row.path("cylinders").get(i).path("piston").asText());
        }
    }

    @ParameterizedTest
    @MethodSource("engines")
    void aSizeIsOfferedWhereSomeMakersPistonsHaveNothingAgainstThem(String code) {
        JsonNode rows = matchOf(code).path("sizes");
        for (String size : texts(answer("/api/engines/" + code).path("sizes"), "size")) {
            boolean open = rows.valueStream()
                    .filter(row -> row.at("/size/size").asText().equals(size))
                    .anyMatch(row -> row.path("blocks").isEmpty());
            assertThat(fitOf(code, size).path("offered").booleanValue())
                    .as(size)
                    .isEqualTo(open);
        }
    }

    /** The kit of a size asked for holds nothing that the look-up does not show as fitting. */
    @ParameterizedTest
    @MethodSource("engines")
    void theBillHoldsOnlyWhatFits(String code) {
        JsonNode match = matchOf(code);
        JsonNode bill = match.path("bill");
        if (bill.isMissingNode()) {
            return;
        }
        JsonNode choice = choiceOf(
                fitOf(code, match.at("/size/size").asText()),
                match.at("/size/design").asText());
        Set<String> shown = new HashSet<>();
        choice.path("pistons").forEach(hole -> shown.addAll(texts(hole.path("numbers"))));
        choice.path("outfits").forEach(outfit -> {
            assertThat(outfit.path("fits").booleanValue()).isTrue();
            for (String part : List.of("rings", "pin", "clip", "bearing")) {
                shown.add(outfit.path(part).asText());
            }
        });
        choice.path("gaskets")
                .valueStream()
                .filter(gasket -> gasket.path("fits").booleanValue())
                .forEach(gasket -> {
                    for (String part : List.of("kit", "head", "base")) {
                        shown.add(gasket.path(part).asText());
                    }
                });
        assertThat(bill.path("lines")).isNotEmpty();
        bill.path("lines")
                .forEach(line -> line.path("covers").forEach(cover -> {
                    if (!cover.path("part").asText().equals("single-use bolt")) {
                        assertThat(shown).contains(cover.path("number").asText());
                    }
                }));
    }
}
