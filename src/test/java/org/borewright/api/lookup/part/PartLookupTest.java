package org.borewright.api.lookup.part;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;
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
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number anybody may have in hand is looked up, and held against the files it was loaded from. */
@QuarkusTest
class PartLookupTest {

    /** What each number is, by the file it stands in; a withdrawn one may stand in no other. */
    private static SortedMap<String, String> whatByNumber() {
        SortedMap<String, String> what = new TreeMap<>();
        lines("withdrawn.csv")
                .forEach(line -> what.put(
                        line.getField("number"),
                        line.getField("state").equals("never made")
                                ? "number that was never made"
                                : "number no longer listed"));
        column("pistons.csv", "piston").forEach(number -> what.put(number, "piston"));
        column("ring_sets.csv", "ring_set").forEach(number -> what.put(number, "ring set"));
        column("pins.csv", "pin").forEach(number -> what.put(number, "wrist pin"));
        column("clips.csv", "clip").forEach(number -> what.put(number, "clip"));
        column("bearings.csv", "bearing").forEach(number -> what.put(number, "small-end bearing"));
        column("gasket_kits.csv", "gasket_kit").forEach(number -> what.put(number, "gasket kit"));
        lines("gaskets.csv").forEach(line -> what.put(line.getField("gasket"), line.getField("place") + " gasket"));
        column("fasteners.csv", "single_use_bolt")
                .filter(number -> !number.isEmpty())
                .forEach(number -> what.put(number, "single-use bolt"));
        lines("boxes.csv").forEach(line -> what.put(line.getField("box"), line.getField("packed")));
        return what;
    }

    static Stream<String> numbers() {
        return Stream.of(
                        whatByNumber().keySet().stream(),
                        column("prices.csv", "number"),
                        column("stock.csv", "number"),
                        column("withdrawn.csv", "replaced_by").filter(number -> !number.isEmpty()),
                        column("boxes.csv", "part"))
                .flatMap(names -> names)
                .distinct();
    }

    private static Map<String, NamedCsvRecord> byNumber(String file) {
        return lines(file).stream().collect(toMap(line -> line.getField("number"), line -> line));
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void everyNumberIsWhatItsFileSays(String number) {
        JsonNode part = answer("/api/parts/" + number);

        assertThat(part.path("number").asText()).isEqualTo(number);
        assertThat(part.path("what").asText()).isEqualTo(whatByNumber().get(number));
        assertThat(part.path("unit").asText()).isEqualTo("mm");
        assertThat(ask("/api/parts/" + number).asByteArray())
                .isEqualTo(ask("/api/parts/" + number).asByteArray());
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void itsPriceAndStockAreThoseOfTheFiles(String number) {
        NamedCsvRecord price = byNumber("prices.csv").get(number);
        NamedCsvRecord stock = byNumber("stock.csv").get(number);
        JsonNode offer = answer("/api/parts/" + number).path("offer");
        if (price == null) {
            assertThat(offer.isMissingNode()).isTrue();
            return;
        }
        String onHand = stock == null ? "0" : stock.getField("on_hand");
        String leadDays = stock == null ? "" : stock.getField("lead_days");
        assertThat(offer.at("/price/amount").decimalValue())
                .isEqualByComparingTo(new BigDecimal(price.getField("price")));
        assertThat(offer.at("/price/currency").asText()).isEqualTo(price.getField("currency"));
        assertThat(offer.path("onHand").asText()).isEqualTo(onHand);
        assertThat(offer.path("leadDays").asText("")).isEqualTo(leadDays);
        assertThat(offer.path("availability").asText())
                .isEqualTo(
                        !onHand.equals("0")
                                ? "in stock"
                                : leadDays.isEmpty()
                                        ? "out of stock, no more to be had"
                                        : "to be ordered, " + leadDays + " days");
    }

    @Test
    void aPistonTellsItsEngineSizeHandGradeAndMass() {
        Map<String, String> engineOf = lines("piston_designs.csv").stream()
                .collect(toMap(line -> line.getField("design"), line -> line.getField("engine")));
        for (NamedCsvRecord line : lines("pistons.csv")) {
            JsonNode piston = answer("/api/parts/" + line.getField("piston"));
            assertThat(piston.path("design").asText()).isEqualTo(line.getField("design"));
            assertThat(piston.path("hand").asText()).isEqualTo(line.getField("hand"));
            assertThat(piston.path("grade").asText()).isEqualTo(line.getField("grade"));
            assertThat(piston.at("/mass/least").decimalValue()).isEqualByComparingTo(line.getField("mass_least_g"));
            assertThat(piston.at("/mass/greatest").decimalValue())
                    .isEqualByComparingTo(line.getField("mass_greatest_g"));
            assertThat(piston.path("uses")).hasSize(1);
            assertThat(piston.at("/uses/0/engine").asText()).isEqualTo(engineOf.get(line.getField("design")));
            assertThat(piston.at("/uses/0/size").asText()).isEqualTo(line.getField("size"));
            JsonNode diameter = piston.at("/dimensions/0");
            assertThat(diameter.path("dimension").asText()).isEqualTo("diameter at gauge height");
            isLength(diameter.path("least"), line.getField("diameter_least_mm"));
            isLength(diameter.path("greatest"), line.getField("diameter_greatest_mm"));
        }
    }

    private static void isLength(JsonNode shown, String millimetres) {
        assertThat(shown.path("nm").decimalValue()).isEqualByComparingTo(new BigDecimal(millimetres).movePointRight(6));
    }

    @Test
    void aBoxTellsWhatIsInItAndEachPartWhichBoxesHoldIt() {
        Map<String, SortedMap<String, String>> contents = new TreeMap<>();
        lines("boxes.csv")
                .forEach(line -> contents.computeIfAbsent(line.getField("box"), any -> new TreeMap<>())
                        .put(line.getField("part"), line.getField("count")));
        Map<String, SortedMap<String, String>> shown = new TreeMap<>();
        Map<String, SortedMap<String, String>> soldIn = new TreeMap<>();
        numbers().forEach(number -> {
            JsonNode part = answer("/api/parts/" + number);
            part.path("contents")
                    .forEach(content -> shown.computeIfAbsent(number, any -> new TreeMap<>())
                            .put(
                                    content.path("number").asText(),
                                    content.path("count").asText()));
            texts(part.path("soldIn"))
                    .forEach(box -> soldIn.computeIfAbsent(box, any -> new TreeMap<>())
                            .put(number, contents.get(box).get(number)));
        });
        assertThat(shown).isEqualTo(contents);
        assertThat(soldIn).isEqualTo(contents);
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "HVT2-GKA | replaced | HVT2-GKB | HVT2-GKB | gasket kit",
                "KV-DS1-G1 | replaced | KV-DS1-G2 KV-DS1-G3 | KV-DS1-G3 | number no longer listed",
                "KV-DS1-G2 | replaced | KV-DS1-G3 | KV-DS1-G3 | wrist pin",
                "NH-KV11-075F | discontinued | '' | '' | piston",
                "KV-DF2-075 | discontinued | '' | '' | piston",
                "NH-OS4-EB075 | discontinued | '' | '' | engine box",
                "NH-TP2-R075 | never made | '' | '' | ring set",
                "TV-SV3-075 | never made | '' | '' | number that was never made",
            })
    void aWithdrawnNumberTellsWhyAndWhatToOrderInstead(
            String number, String state, String replacements, String replacement, String what) {
        JsonNode part = answer("/api/parts/" + number);
        JsonNode withdrawn = part.path("withdrawn");
        assertThat(part.path("what").asText()).isEqualTo(what);
        assertThat(withdrawn.path("number").asText()).isEqualTo(number);
        assertThat(withdrawn.path("state").asText()).isEqualTo(state);
        assertThat(withdrawn.path("note").asText()).isNotBlank();
        assertThat(String.join(" ", texts(withdrawn.path("replacements")))).isEqualTo(replacements);
        assertThat(withdrawn.path("replacement").asText()).isEqualTo(replacement);
        if (!replacement.isEmpty()) {
            assertThat(answer("/api/parts/" + replacement).path("withdrawn").isMissingNode())
                    .isTrue();
        }
    }

    /** Out of stock is the fourth answer: the number is as good as ever. */
    @Test
    void whatIsOutOfStockIsNotWithdrawn() {
        JsonNode part = answer("/api/parts/NH-KV11-EB025");
        assertThat(part.path("withdrawn").isMissingNode()).isTrue();
        assertThat(part.at("/offer/availability").asText()).isEqualTo("to be ordered, 35 days");
    }

    @Test
    void onlyWithdrawnNumbersSayWhy() {
        List<String> withdrawn = numbers()
                .filter(number -> answer("/api/parts/" + number).has("withdrawn"))
                .toList();
        assertThat(withdrawn)
                .containsExactlyInAnyOrderElementsOf(
                        column("withdrawn.csv", "number").toList());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "nh-os4-050 | NH-OS4-050 | Did you mean NH-OS4-050, NH-OS4-000 or NH-OS4-R050?",
                "NHOS4050 | NH-OS4-050 | Did you mean NH-OS4-050, NH-OS4-000 or NH-OS4-R050?",
                "KETTLE-99 | nothing | Compare the number with the box or the bill: it is capital letters, digits and hyphens.",
                "X | nothing | Compare the number with the box or the bill: it is capital letters, digits and hyphens.",
                "' ' | nothing | Compare the number with the box or the bill: it is capital letters, digits and hyphens.",
                "É💥/\\{x} | nothing | Compare the number with the box or the bill: it is capital letters, digits and hyphens.",
            })
    void aNumberNobodyBearsIsRefusedWithTheNearOnes(String typed, String suggestion, String wayOut) {
        JsonNode problem = refusal("/api/parts/" + escaped(typed), 404);
        assertThat(problem.path("type").asText()).isEqualTo("/problems/unknown-part");
        JsonNode error = problem.at("/errors/0");
        assertThat(error.path("pointer").asText()).isEqualTo("number");
        assertThat(error.path("value").asText()).isEqualTo(typed);
        assertThat(error.path("wayOut").asText()).isEqualTo(wayOut);
        assertThat(error.at("/suggestion/value").asText("nothing")).isEqualTo(suggestion);
    }

    @Test
    void anAnswerWithAPriceIsNeverKept() {
        assertThat(ask("/api/parts/NH-OS4-050").header("Cache-Control")).isEqualTo("no-store");
        assertThat(ask("/api/parts/NH-OS4-050").header("ETag")).isNull();
    }
}
