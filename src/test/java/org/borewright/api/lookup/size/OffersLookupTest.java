package org.borewright.api.lookup.size;

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
import io.restassured.response.Response;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Price and stock change from one moment to the next, and are asked for each time. */
@QuarkusTest
class OffersLookupTest {

    private static final String OFFERS = "/api/engines/OSTRAVEL-4/sizes/+0.50/offers";

    @Test
    void pricesAreNeverKept() {
        Response offers = ask(OFFERS);
        assertThat(offers.header("Cache-Control")).isEqualTo("no-store");
        assertThat(offers.header("ETag")).isNull();
    }

    @Test
    void everyOfferIsThatOfItsNumber() {
        for (NamedCsvRecord line : lines("sizes.csv")) {
            JsonNode offers = answer(
                    "/api/engines/" + line.getField("engine") + "/sizes/" + escaped(line.getField("size")) + "/offers");
            assertThat(offers.path("engine").asText()).isEqualTo(line.getField("engine"));
            assertThat(offers.path("size").asText()).isEqualTo(line.getField("size"));
            assertThat(texts(offers.path("offers"), "number")).isSorted().doesNotHaveDuplicates();
            for (JsonNode offer : offers.path("offers")) {
                JsonNode part = answer("/api/parts/" + offer.path("number").asText());
                assertThat(offer.path("offer")).isEqualTo(part.path("offer"));
                assertThat(offer.path("what")).isEqualTo(part.path("what"));
                assertThat(texts(part.path("uses"), "engine")).contains(line.getField("engine"));
                assertThat(offers.path("revision")).isEqualTo(part.path("revision"));
            }
        }
    }

    @Test
    void everyNumberWithAPriceIsOfferedForSomeSize() {
        Set<String> offered = new TreeSet<>();
        lines("sizes.csv")
                .forEach(line -> offered.addAll(texts(
                        answer("/api/engines/" + line.getField("engine") + "/sizes/" + escaped(line.getField("size"))
                                        + "/offers")
                                .path("offers"),
                        "number")));
        assertThat(offered)
                .containsExactlyInAnyOrderElementsOf(
                        column("prices.csv", "number").toList());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "NH-OS4-050 | piston | in stock",
                "NH-OS4-CB050 | cylinder box | in stock",
                "NH-OS4-EB050 | engine box | to be ordered, 21 days",
                "OVS4-HB | single-use bolt | in stock",
            })
    void aSizeOffersItsPartsAndItsBoxes(String number, String what, String availability) {
        List<JsonNode> found = answer(OFFERS)
                .path("offers")
                .valueStream()
                .filter(offer -> offer.path("number").asText().equals(number))
                .toList();
        assertThat(found).hasSize(1);
        assertThat(found.get(0).path("what").asText()).isEqualTo(what);
        assertThat(found.get(0).at("/offer/availability").asText()).isEqualTo(availability);
    }

    @Test
    void otherSizesAreNotOffered() {
        assertThat(texts(answer(OFFERS).path("offers"), "number"))
                .noneMatch(number -> number.contains("025") || number.contains("075") || number.contains("100"));
    }

    /** There are no lengths in it. */
    @Test
    void aUnitIsRefusedForThereIsNothingToMeasure() {
        JsonNode problem = refusal(OFFERS + "?unit=mm", 400);
        assertThat(texts(problem.path("errors"), "pointer")).containsExactly("unit");
        assertThat(problem.at("/errors/0/limit").asText()).isEqualTo("known here: none");
    }

    @Test
    void theSameQuestionGetsTheSameBytes() {
        assertThat(ask(OFFERS).asByteArray()).isEqualTo(ask(OFFERS).asByteArray());
    }
}
