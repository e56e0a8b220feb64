package org.borewright.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.math.BigDecimal;
import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The desk's job from the first page to the quote on paper, by keyboard alone, and every figure held against the API's. */
@QuarkusTest
class DeskInABrowserTest {

    private static final String FOUR_HOLES = """
            {"engine":"OSTRAVEL-4","unit":"mm","condition":"worn","temperature":20,
             "presentSize":{"size":"standard","knownFrom":"record"},
             "cylinders":[{"cylinder":"1","diameter":77.295},{"cylinder":"2","diameter":77.370},
              {"cylinder":"3","diameter":77.350},{"cylinder":"4","diameter":77.310}]}""";

    private static Chromium chromium;

    @TestHTTPResource("/")
    URI service;

    @BeforeEach
    void openTheBrowser() {
        if (chromium == null) {
            chromium = Chromium.open(service.getPort());
        }
    }

    @AfterAll
    static void closeTheBrowser() {
        if (chromium != null) {
            chromium.close();
        }
    }

    @Test
    void fromAFewLettersToTheQuoteByKeyboardAlone() {
        JsonPath told = answer("/api/match", FOUR_HOLES);
        chromium.at("/", page -> {
            tabTo(page, "words");
            page.keyboard().type("estu");
            tabTo(page, "a[href='/desk/OSTRAVEL-4']");
            page.keyboard().press("Enter");
            page.waitForURL("**/desk/OSTRAVEL-4");
            choose(page, "/presentSize/size", "st");
            choose(page, "/presentSize/knownFrom", "rec");
            for (int hole = 0; hole < 4; hole++) {
                tabTo(page, "number:/cylinders/" + hole + "/diameter");
                page.keyboard()
                        .type(List.of("77.295", "77.370", "77.350", "77.310").get(hole));
            }
            page.keyboard().press("Enter");
            assertThat(page.locator(".verdict")).isVisible();
            isTold(page, told);
            Chromium.isForEverybody(page, "desk-matched");
            tabTo(page, "/customer");
            page.keyboard().type("Mill Lane Launches");
            tabTo(page, "/block");
            page.keyboard().type("KB-1");
            tabTo(page, "by");
            page.keyboard().type("Ada");
            page.keyboard().press("Enter");
            assertThat(page.locator("h1 .state")).hasText("quoted");
            Chromium.isForEverybody(page, "order-quoted");
            isQuotedAs(page, told);
        });
    }

    private static void isTold(Page page, JsonPath told) {
        String text = page.locator(".answer").innerText();
        assertThat(text)
                .contains(told.getString("says"))
                .contains(told.getString("size.size"))
                .contains(told.getString("ready"))
                .contains(amount(told, "total.amount") + " EUR")
                .contains(amount(told, "bill.total.amount") + " EUR");
        List<String> finishes = told.getList("sizes.finish.nm", String.class);
        for (int row = 0; row < finishes.size(); row++) {
            String cells =
                    page.locator("table").first().locator("tbody tr").nth(row).innerText();
            assertThat(cells).contains(told.getString("sizes[" + row + "].certainty"));
            assertThat(cells.replace(".", "")).contains(finishes.get(row).substring(0, 5));
        }
    }

    private void isQuotedAs(Page page, JsonPath told) {
        String paper = page.locator("a[href$='/paper']").getAttribute("href");
        var pdf = given().get(paper);
        assertThat(pdf.statusCode()).isEqualTo(200);
        assertThat(pdf.contentType()).isEqualTo("application/pdf");
        assertThat(pdf.asByteArray())
                .isEqualTo(given().header("Accept", "application/pdf")
                        .get("/api" + paper.replace("/paper", ""))
                        .asByteArray());
        JsonPath quote = given().get("/api" + paper.replace("/paper", "")).jsonPath();
        assertThat(quote.getString("offer.size")).isEqualTo(told.getString("size.size"));
        assertThat(page.locator("main").innerText()).contains(quote.getString("says"));
    }

    @Test
    void aStampIsAnsweredWithItsBranches() {
        JsonPath told = answer("/api/estimate", "{\"engine\":\"BRIMSLEIGH-S34\",\"stamp\":\"020\"}");
        chromium.at("/desk/BRIMSLEIGH-S34?known=stamp", page -> {
            assertThat(page.locator("button:visible"))
                    .hasText(new String[] {"One diameter of each hole", "A full survey", "Work it out"});
            tabTo(page, "/stamp");
            page.keyboard().type("020");
            page.keyboard().press("Enter");
            assertThat(page.locator(".verdict")).isVisible();
            String text = page.locator(".answer").innerText();
            assertThat(text).contains(told.getString("says"));
            for (String says : told.getList("branches.says", String.class)) {
                assertThat(page.locator(".answer").textContent()).contains(says);
            }
            Chromium.isForEverybody(page, "desk-estimated");
        });
    }

    @Test
    void whatIsWrongStandsBesideItsFieldAndNothingTypedIsLost() {
        chromium.at("/desk/OSTRAVEL-4?known=survey", page -> {
            Chromium.isForEverybody(page, "desk-survey");
            page.locator("[id='number:/cylinders/0/grid/readings/0/0']").fill("773.2");
            page.locator("[id='number:/cylinders/1/grid/readings/0/1']").fill("77,3");
            page.keyboard().press("Enter");
            assertThat(page.locator("[id='number:/cylinders/1/grid/readings/0/1']"))
                    .hasValue("77,3");
            assertThat(page.locator("[id='number:/cylinders/1/grid/readings/0/1~']"))
                    .containsText("is not a number");
            page.locator(".refused a").first().focus();
            page.keyboard().press("Enter");
            assertThat((String) page.evaluate("location.hash")).contains("/cylinders/");
            Chromium.isForEverybody(page, "desk-refused");
        });
    }

    @Test
    void theOrdersAreListedAndAnOrderGoesOnByItsForms() {
        chromium.at("/desk/HALVERN-131/example", page -> {
            page.locator("[id='/customer']").fill("Reed Lane Cycles");
            page.locator("[id='/block']").fill("KB-2");
            page.locator("[id='by']").fill("Ada");
            page.keyboard().press("Enter");
            page.locator("#why-decline").fill("The customer thinks it over.");
            page.locator("#by-decline").fill("Bo");
            page.keyboard().press("Enter");
            assertThat(page.locator("h1 .state")).hasText("declined");
            assertThat(page.locator("#journal ~ .scroll")).containsText("Bo");
            page.navigate(service + "orders?state=declined&limit=1");
            assertThat(page.locator("tbody tr")).hasCount(1);
            Chromium.isForEverybody(page, "orders");
        });
    }

    /** The holes may be swapped: their tags go into the order by keyboard, and one that is wrong is told beside its field. */
    @Test
    void theTagsOfBarrelsAreTypedWithTheOrderByKeyboardAlone() {
        chromium.at("/desk/DRUMLACH-F2/example", page -> {
            tabTo(page, "/customer");
            page.keyboard().type("Mill Lane Launches");
            tabTo(page, "/block");
            page.keyboard().type("KB-3");
            tabTo(page, "by");
            page.keyboard().type("Ada");
            tabTo(page, "/barrels/0/tag");
            page.keyboard().type("KB-3.l");
            page.keyboard().press("Enter");
            assertThat(page.locator("[id='/barrels/1/tag~']")).containsText("has no tag");
            Chromium.isForEverybody(page, "desk-barrels-refused");
            assertThat(page.locator("[id='/barrels/0/tag']")).hasValue("KB-3.l");
            tabTo(page, "/barrels/1/tag");
            page.keyboard().type("KB-3.r");
            page.keyboard().press("Enter");
            assertThat(page.locator("h1 .state")).hasText("quoted");
            assertThat(page.locator(".facts")).containsText("left: KB-3.l");
            Chromium.isForEverybody(page, "order-with-barrels");
            tabTo(page, "a[href='/blocks/KB-3.r']");
            page.keyboard().press("Enter");
            assertThat(page.locator("h1")).containsText("Barrel KB-3.r");
            assertThat(page.locator("tbody").first()).containsText("KB-3, cylinder right");
            Chromium.isForEverybody(page, "barrel");
            page.navigate(service + "blocks/KB-3");
            assertThat(page.locator("svg.life")).hasCount(2);
            Chromium.isForEverybody(page, "block-with-barrels");
        });
        chromium.at(
                "/desk/OSTRAVEL-4/example",
                page -> assertThat(page.locator("[id='/barrels/0/tag']")).hasCount(0));
    }

    private static JsonPath answer(String path, String question) {
        return given().contentType("application/json").body(question).post(path).jsonPath();
    }

    /** As money is written, with its two decimals. */
    private static String amount(JsonPath told, String place) {
        return new BigDecimal(told.getString(place)).setScale(2).toPlainString();
    }

    private static void choose(Page page, String field, String letters) {
        tabTo(page, field);
        page.keyboard().type(letters);
    }

    /** Presses the tabulator until a field of this name has the focus, or what a selector finds. */
    private static void tabTo(Page page, String field) {
        for (int pressed = 0; pressed < 80; pressed++) {
            page.keyboard().press("Tab");
            boolean there = (Boolean) page.evaluate(
                    "field => document.activeElement.name === field"
                            + " || (/[\\[]/.test(field) && document.activeElement.matches(field))",
                    field);
            if (there) {
                return;
            }
        }
        throw new AssertionError("nobody gets to " + field + " by keyboard");
    }
}
