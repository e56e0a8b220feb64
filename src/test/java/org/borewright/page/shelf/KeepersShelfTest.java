package org.borewright.page.shelf;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;

/** The page of the shelf shows the places that the API tells, size by size. */
@QuarkusTest
@TestProfile(OwnShop.class)
class KeepersShelfTest {

    private static final int MANY = 60;

    @Test
    void ofAnEngineEverythingStandsUnderItsSizeWithItsFigures() {
        String page = words("/shelf?engine=HALVERN-131");
        List<Map<String, Object>> places =
                given().get("/api/stock?engine=HALVERN-131").jsonPath().getList("places");

        assertThat(places).hasSizeGreaterThan(15).allSatisfy(place -> {
            Object lead = place.get("leadDays");
            assertThat(page.replace(" none ", " ").replace(" awaited ", " "))
                    .contains(" " + place.get("number") + " " + place.get("what") + " " + place.get("onHand") + " "
                            + place.get("putAside") + " " + place.get("left") + " " + place.get("toCome") + " "
                            + (lead == null ? "no more to be had" : lead + (lead.equals(1) ? " day " : " days ")));
        });
        int half = page.indexOf(" +0.50 ");
        assertThat(half).isPositive();
        assertThat(page.indexOf(" NH-H131-050 ", half)).isBetween(half, page.indexOf(" +0.75 ", half));
        assertThat(page).contains(" HV131-B04 ", "Ostravel Estuary 1.6 (OSTRAVEL-4)");
    }

    /** More say yes to the size than there are parts for it; they call it off again, for others find their parts on this shelf. */
    @Test
    void whatOrdersWaitForStandsAtItsSize() {
        List<Orders> waiting = new ArrayList<>();
        do {
            Orders order = Orders.quoted("KS-" + waiting.size());
            order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
            waiting.add(order);
        } while (toCome() == 0 && waiting.size() < MANY);
        try {
            assertThat(toCome()).isPositive();
            assertThat(words("/shelf?engine=HALVERN-131"))
                    .containsPattern(" \\+0\\.50 [1-9][0-9]* short, orders wait for " + toCome() + " pieces? ")
                    .contains(" +0.25 nothing short ");
        } finally {
            waiting.forEach(order -> order.does("withdraw", "{\"reason\":\"called off\"}"));
        }
        assertThat(toCome()).isZero();
    }

    /** How many pieces orders wait for of what goes in at +0.50 alone. */
    private static int toCome() {
        return given()
                .get("/api/stock?engine=HALVERN-131")
                .jsonPath()
                .<Integer>getList("places.findAll { it.uses.any { use -> use.size == '+0.50' } }.toCome")
                .stream()
                .mapToInt(Integer::intValue)
                .sum();
    }

    @Test
    void withoutAnEngineItShowsWhatIsShortAndWhatCameLast() {
        Orders.arrive("HV131-GK", 3).statusCode(200);
        String page = words("/shelf");

        assertThat(page)
                .contains("Of these none is left, or orders wait for them.", " HV131-B08 ")
                .contains("stock HV131-GK")
                .contains("3 arrived, " + Orders.left("HV131-GK") + " left Ada")
                .contains(given().get("/api/stock?limit=1").jsonPath().getString("revision.fit"));
    }

    /** The shelf was empty: what came is what is in the files. */
    @Test
    void itTellsWhatTheLastImportChanged() throws IOException {
        assertThat(words("/shelf"))
                .contains("so all of it was new: " + named("engines.csv", 0) + " engines and the numbers below")
                .contains(" piston 0 " + named("pistons.csv", 0) + " ring set 0 " + named("ring_sets.csv", 0) + " ");
    }

    /** How many things a file of the catalogue names in a column. */
    private static long named(String file, int column) throws IOException {
        return Files.readAllLines(Path.of("catalog-data", file)).stream()
                .skip(1)
                .map(line -> line.split(",", -1)[column])
                .distinct()
                .count();
    }

    @Test
    void anEngineThatNobodyKnowsIsNotFound() {
        assertThat(given().get("/shelf?engine=NOBODY").statusCode()).isEqualTo(404);
    }

    private static String words(String path) {
        return given().header("Accept", "text/html")
                .get(path)
                .asString()
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }
}
