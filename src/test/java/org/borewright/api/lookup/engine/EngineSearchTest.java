package org.borewright.api.lookup.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.api.lookup.Counter.answer;
import static org.borewright.api.lookup.Counter.ask;
import static org.borewright.api.lookup.Counter.column;
import static org.borewright.api.lookup.Counter.escaped;
import static org.borewright.api.lookup.Counter.refusal;
import static org.borewright.api.lookup.Counter.texts;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A sales desk looks for an engine by what the customer says of it. */
@QuarkusTest
class EngineSearchTest {

    private static List<String> found(String query) {
        return texts(answer("/api/engines?" + query).path("engines"), "engine");
    }

    private static List<String> codes(String list) {
        return list.equals("none") ? List.of() : List.of(list.split(" ", -1));
    }

    @Test
    void withoutAnyWordAllEnginesAreFoundSortedByCode() {
        assertThat(found("page=1"))
                .isEqualTo(column("engines.csv", "engine").sorted().toList());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "estuary | OSTRAVEL-4",
                "ESTUARY 1.6 | OSTRAVEL-4",
                "1.6 ostravel | OSTRAVEL-4",
                "OSTRAVEL-4 | OSTRAVEL-4",
                "ostravel4 | OSTRAVEL-4",
                "ostravel 4 | OSTRAVEL-4",
                "ostr | OSTRAVEL-4 OSTRAVEL-6",
                "torresk quadrel 650 | TORRESK-F4",
                "650 quadrel torresk | TORRESK-F4",
                "Hálvêrn | HALVERN-131 HALVERN-T2",
                "twin | DRUMLACH-F2 HALVERN-T2 KOVARDA-V11 TORRESK-P2",
                "TWIN, parallel | HALVERN-T2 TORRESK-P2",
                "v-twin | KOVARDA-V11",
                "twin v | KOVARDA-V11",
                "flat twin drumlach | DRUMLACH-F2",
                "four inline | OSTRAVEL-4 TORRESK-F4",
                "inline | OSTRAVEL-4 OSTRAVEL-6 SELVARRE-3 TORRESK-F4",
                "wet liner | SELVARRE-3",
                "sleeve | DRUMLACH-S1 HALVERN-131 TORRESK-F4 TORRESK-P2",
                "single iron barrel | BRIMSLEIGH-S34",
                "plated | MIRENDAL-P1",
                "twin left | none",
                "ravel | none",
                "estuary upland | none",
                "--- | none",
                ". | none",
                "{x} | none",
                "% | none",
                "💥 | none",
            })
    void everyWordBeginsOneOfTheEnginesOwnWhateverTheirOrderAndCase(String words, String engines) {
        assertThat(found("words=" + escaped(words))).isEqualTo(codes(engines));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "Torresk, TORRESK-F4 TORRESK-P2",
        "tORRESK, TORRESK-F4 TORRESK-P2",
        "Törresk, TORRESK-F4 TORRESK-P2",
        "Torres, none",
        "Norheim, none",
    })
    void theMakerIsNamedWhole(String maker, String engines) {
        assertThat(found("maker=" + escaped(maker))).isEqualTo(codes(engines));
    }

    /** Reckoned apart from the service, π/4·B²·S·n: 625.896, 637.252 and 645.741 cm³, shown as 625.9, 637.3 and 645.7. */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({
        "625.9, 645.7, DRUMLACH-S1 TORRESK-F4 TORRESK-P2",
        "626, 645.7, DRUMLACH-S1 TORRESK-F4",
        "625.9, 645.6, DRUMLACH-S1 TORRESK-P2",
        "637.3, 637.3, DRUMLACH-S1",
        "637.4, 645.6, none",
        "0, 131.3, HALVERN-131",
        "0.0, 131.2, none",
        "3017.4, 100000, OSTRAVEL-6",
        "3017.5, 100000.0, none",
    })
    void theLimitsOfDisplacementAreInclusiveAndComparedWithWhatIsShown(String from, String to, String engines) {
        assertThat(found("displacementFrom=" + from + "&displacementTo=" + to)).isEqualTo(codes(engines));
    }

    @Test
    void oneLimitAloneLeavesTheOtherSideOpen() {
        assertThat(found("displacementFrom=1098.7"))
                .containsExactly("KOVARDA-V11", "OSTRAVEL-4", "OSTRAVEL-6", "SELVARRE-3");
        assertThat(found("displacementTo=212.7")).containsExactly("HALVERN-131", "MIRENDAL-P1");
    }

    @Test
    void allThatIsAskedForMustHoldAtOnce() {
        assertThat(found("words=twin&maker=torresk&displacementFrom=600&displacementTo=700"))
                .containsExactly("TORRESK-P2");
        assertThat(found("words=twin&maker=torresk&displacementFrom=700")).isEmpty();
    }

    @Test
    void whatIsLeftEmptyIsNotAskedFor() {
        assertThat(found("words=&maker=%20&displacementFrom=&page=&size=&unit="))
                .hasSize(12);
    }

    /** Lengths follow the unit; a displacement is in cm³ in either. */
    @Test
    void inInchesTheLengthsAreInchesAndTheDisplacementIsThatOfTheMillimetres() {
        JsonNode mm = answer("/api/engines?words=tiller").path("engines").get(0);
        JsonNode in = answer("/api/engines?words=tiller&unit=in");
        assertThat(in.path("unit").asText()).isEqualTo("in");
        // 83.566 mm and 100.584 mm over 25.4.
        assertThat(in.at("/engines/0/bore/value").decimalValue()).isEqualByComparingTo("3.29");
        assertThat(in.at("/engines/0/stroke/value").decimalValue()).isEqualByComparingTo("3.96");
        assertThat(in.at("/engines/0/bore/nm")).isEqualTo(mm.at("/bore/nm"));
        assertThat(in.at("/engines/0/displacement").decimalValue()).isEqualByComparingTo("551.7");
        assertThat(in.at("/engines/0/displacement")).isEqualTo(mm.at("/displacement"));
        assertThat(texts(
                        answer("/api/engines?unit=in&displacementFrom=551.7&displacementTo=551.7")
                                .path("engines"),
                        "engine"))
                .containsExactly("BRIMSLEIGH-S34");
    }

    @Test
    void nothingFoundIsAnAnswerAndNoFault() {
        JsonNode none = answer("/api/engines?words=kettle");
        assertThat(none.path("engines")).isEmpty();
        assertThat(none.path("total").intValue()).isZero();
        assertThat(none.path("links")).isEmpty();
    }

    @Test
    void everyFaultIsToldAtOnce() {
        JsonNode problem = refusal(
                "/api/engines?displacementFrom=12.34&displacementTo=1e3&page=0&size=101&unit=cm&words=a&words=b&maker="
                        + "x".repeat(101) + "&wrods=twin",
                400);
        assertThat(problem.path("type").asText()).isEqualTo("/problems/bad-parameter");
        assertThat(faults(problem))
                .containsExactlyInAnyOrder(
                        "displacementFrom 12.34 | The number has too many decimals. | 0 to 100000, at most one decimal",
                        "displacementTo 1e3 | This is not a plain number. | 0 to 100000, at most one decimal",
                        "page 0 | The number is outside its range. | 1 to 100000, whole",
                        "size 101 | The number is outside its range. | 1 to 100, whole",
                        "unit cm | The unit is not known. | mm or in",
                        "words  | The parameter is given 2 times. | once",
                        "maker  | The parameter is too long. | at most 100 characters",
                        "wrods  | The parameter is not known here. | known here: displacementFrom, displacementTo, maker, page,"
                                + " size, unit, words");
        assertThat(problem.at("/errors/7/suggestion/value").asText()).isEqualTo("words");
        assertThat(texts(problem.path("errors"), "wayOut")).allMatch(way -> !way.isBlank());
    }

    private static List<String> faults(JsonNode problem) {
        return problem.path("errors")
                .valueStream()
                .map(error -> error.path("pointer").asText() + " "
                        + error.path("value").asText() + " | "
                        + error.path("reason").asText() + " | "
                        + error.path("limit").asText())
                .toList();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "displacementFrom=650&displacementTo=649.9 | displacementTo 649.9 | It is less than displacementFrom.",
                "displacementTo=-1 | displacementTo -1 | The number is outside its range.",
                "displacementTo=100000.1 | displacementTo 100000.1 | The number is outside its range.",
                "displacementTo=1000000000000000 | displacementTo 1000000000000000 | The number is outside its range.",
                "displacementTo=NaN | displacementTo NaN | This is not a plain number.",
                "displacementTo=1,5 | displacementTo 1,5 | This is not a plain number.",
                "page=100001 | page 100001 | The number is outside its range.",
                "page=1.5 | page 1.5 | The number has too many decimals.",
                "size=-1 | size -1 | The number is outside its range.",
                "size=two | size two | This is not a plain number.",
                "page=%D9%A1 | page ١ | This is not a plain number.",
                "unit=MM | unit MM | The unit is not known.",
                "UNIT=mm | UNIT  | The parameter is not known here.",
                "page=1&page=1 | page  | The parameter is given 2 times.",
            })
    void aFaultyParameterIsNamedWithWhatWasSent(String query, String parameter, String reason) {
        assertThat(faults(refusal("/api/engines?" + query, 400)))
                .singleElement()
                .asString()
                .startsWith(parameter)
                .contains(reason);
    }

    @ParameterizedTest(name = "{0} on a page")
    @ValueSource(ints = {1, 2, 5, 11, 12, 13, 100})
    void goingFromPageToPageMeetsEveryEngineOnceAndTheWayBackIsTheSame(int size) {
        List<String> met = new ArrayList<>();
        String last = "";
        for (String page = "/api/engines?size=" + size; page != null; page = next(page)) {
            met.addAll(texts(answer(page).path("engines"), "engine"));
            last = page;
        }
        assertThat(met).isEqualTo(column("engines.csv", "engine").sorted().toList());

        List<String> back = new ArrayList<>();
        for (String page = last;
                page != null;
                page = answer(page).at("/links/prev").textValue()) {
            back.addAll(0, texts(answer(page).path("engines"), "engine"));
        }
        assertThat(back).isEqualTo(met);
    }

    private static String next(String page) {
        JsonNode answer = answer(page);
        assertThat(answer.path("total").intValue()).isEqualTo(12);
        return answer.at("/links/next").textValue();
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 5, 99, 100_000})
    void beyondTheEndThePageIsEmptyAndLeadsBackToTheLast(int page) {
        JsonNode beyond = answer("/api/engines?size=4&page=" + page);
        assertThat(beyond.path("engines")).isEmpty();
        assertThat(beyond.path("total").intValue()).isEqualTo(12);
        assertThat(beyond.at("/links/next").isMissingNode()).isTrue();
        assertThat(answer(beyond.at("/links/prev").textValue()).path("page").intValue())
                .isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a+b&c=d", "{x}", "%", "100%25", "é ö", "\"'<>;", "#", "?page=9", "💥", "../..", "1.6"})
    void aLinkCarriesTheWordsAsTheyWereSent(String words) {
        JsonNode second = answer("/api/engines?page=2&unit=in&words=" + escaped(words));
        String link = second.at("/links/prev").textValue();
        assertThat(link)
                .startsWith("/api/engines?")
                .contains("page=1", "unit=in")
                .doesNotContain(" ", "{", "\"", "<");
        JsonNode first = answer(link);
        assertThat(first.path("page").intValue()).isEqualTo(1);
        assertThat(first.path("total")).isEqualTo(second.path("total"));
        assertThat(wordsOf(link)).isEqualTo(words);
    }

    private static String wordsOf(String link) {
        return Stream.of(URI.create(link).getRawQuery().split("&", -1))
                .filter(parameter -> parameter.startsWith("words="))
                .map(parameter -> URLDecoder.decode(parameter.substring("words=".length()), StandardCharsets.UTF_8))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameQuestionGetsTheSameBytes() {
        String question = "/api/engines?words=twin&size=3&unit=in";
        assertThat(ask(question).asByteArray()).isEqualTo(ask(question).asByteArray());
    }
}
