package org.borewright.api.shelf;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.path.json.JsonPath;
import java.util.ArrayList;
import java.util.List;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@TestProfile(OwnShop.class)
class ShelfLookupTest {

    private static final String GASKET = "HV131-B08";
    private static final String PISTON = "NH-H131-075";

    @Test
    void theWholeShelfIsReadPageByPageWithoutGapsOrRepeats() {
        List<String> whole = places("limit=1000").getList("places.number");
        assertThat(whole).hasSizeGreaterThan(150).isSorted().doesNotHaveDuplicates();

        List<String> paged = new ArrayList<>();
        String after = "";
        while (after != null) {
            JsonPath page = places("limit=7&after=" + after);
            paged.addAll(page.getList("places.number"));
            after = page.get("after");
        }
        assertThat(paged).isEqualTo(whole);
    }

    @Test
    void eachPlaceIsWhatItsNumberAloneIsAnswered() {
        JsonPath engine = places("engine=HALVERN-131");
        List<String> numbers = engine.getList("places.number");
        assertThat(numbers).hasSizeGreaterThan(15).contains(GASKET);
        for (int i = 0; i < numbers.size(); i++) {
            JsonPath alone = given().get("/api/stock/" + numbers.get(i)).jsonPath();
            for (String figure : List.of("onHand", "putAside", "left", "toCome", "leadDays")) {
                assertThat(engine.<Object>get("places[" + i + "]." + figure))
                        .as(numbers.get(i) + ", " + figure)
                        .isEqualTo(alone.get(figure));
            }
        }
        given().get("/api/stock?engine=HALVERN-131")
                .then()
                .body("places.uses*.engine.flatten().unique()", hasItem("HALVERN-131"))
                .body("places.find { it.number == 'NH-H131-050' }.uses.size", hasItem("+0.50"))
                .body("places.number", not(hasItem("NR-OS4-050")));
    }

    @Test
    void shortIsWhatIsNotThereOrAwaited() {
        given().get("/api/stock?short=true&limit=1000")
                .then()
                .body("places.short", everyItem(is(true)))
                .body("places.number", hasItem(GASKET));
        given().get("/api/stock?short=false&limit=1000").then().body("places.size()", greaterThan(150));

        assertThat(shortOf("TORRESK-F4")).contains("NH-TF4-RP050");
        Orders.arrive("NH-TF4-RP050", 1).statusCode(200);
        assertThat(shortOf("TORRESK-F4")).doesNotContain("NH-TF4-RP050");
    }

    @Test
    void whatOrdersWaitForIsToComeUntilTheyWaitNoLonger() {
        List.of("HV131-SE", "HV131-GK").forEach(part -> Orders.arrive(part, 1).statusCode(200));
        int before = awaited();
        Orders order = Orders.opened("rebuild", "SL-1");
        order.does("survey", Orders.SINGLE_WORN.replace("53.720", "53.960")).statusCode(200);
        order.does("quotes", "{}").statusCode(201).body("offer.size", equalTo("+0.75"));
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);

        assertThat(awaited()).isEqualTo(before + 1);
        assertThat(shortOf("HALVERN-131")).contains(PISTON);
        order.does("withdraw", "{\"reason\":\"sold the boat\"}").statusCode(200);
        assertThat(awaited()).isEqualTo(before);
    }

    private static int awaited() {
        return places("engine=HALVERN-131").getInt("places.find { it.number == '" + PISTON + "' }.toCome");
    }

    private static List<String> shortOf(String engine) {
        return places("short=true&engine=" + engine).getList("places.number");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "short=perhaps, 400, true or false",
        "limit=1001, 400, 1 to 1000",
        "engines=x, 400, known here",
        "engine=HALVERN-132, 200, '\"places\":[]'",
    })
    void whatCannotBeAskedIsRefusedAndAnEngineNobodyKnowsHasNoPlaces(String asked, int status, String says) {
        given().get("/api/stock?" + asked).then().statusCode(status).body(containsString(says));
    }

    @Test
    void saysWhichCatalogueItStandsOn() {
        given().get("/api/stock?limit=1")
                .then()
                .body("revision", equalTo(given().get("/api/parts/" + GASKET).path("revision")))
                .body("loadedAt", containsString("T"));
    }

    private static JsonPath places(String asked) {
        return given().get("/api/stock?" + asked)
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }
}
