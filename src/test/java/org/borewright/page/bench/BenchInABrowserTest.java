package org.borewright.page.bench;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.borewright.page.Chromium;
import org.borewright.page.bench.paper.Answer;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;

/** The machinist's job, from the survey to the signature, with the keyboard alone and a gauge in the other hand. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BenchInABrowserTest {

    private static final String[][] WORN = {
        {"77.295", "77.270", "77.250", "77.240", "77.228", "77.225"},
        {"77.370", "77.330", "77.300", "77.280", "77.232", "77.228"},
        {"77.350", "77.310", "77.280", "77.262", "77.230", "77.226"},
        {"77.310", "77.285", "77.255", "77.245", "77.229", "77.224"},
    };

    @TestHTTPResource("/")
    URI service;

    @Test
    void theMachinistsJobGoesByKeyboardFromTheSurveyToTheSignature() {
        long order = opened();
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/bench", page -> Chromium.isForEverybody(page, "bench"));
            chromium.at("/orders/" + order + "/survey", page -> surveys(page, order));
            String size = sold(order);
            chromium.at("/orders/" + order + "/confirm", page -> confirms(page, order, size));
            chromium.at("/orders/" + order + "/hone", page -> reads(page, order));
            chromium.at("/orders/" + order + "/finish", page -> finishes(page, order));
        }
        assertThat(text(order(order), "state")).isEqualTo("finished");
    }

    private static void surveys(Page page, long order) {
        Chromium.isForEverybody(page, "bench-survey-empty");
        Typist typist = new Typist(page);
        typist.at("/presentSize/size").types("standard");
        typist.at("/presentSize/knownFrom").types("record");
        typist.at("/gauge/name").types("BG-1");
        typist.at("number:/temperature").types("20");
        typist.at("number:/cylinders/0/grid/depths/0").enters("10", "45", "90");
        for (String[] hole : WORN) {
            typist.enters(hole);
        }
        List<String> drawn = points(page);
        assertThat(drawn).hasSize(8).noneMatch(String::isEmpty);
        typist.isAt("number:/deckFlatness").enters("0.01");
        typist.isAt("number:/deckSkim").enters("");
        typist.isAt("number:/skimmedBefore").enters("0");
        page.keyboard().press("Enter");
        page.keyboard().press("Enter");
        typist.isAt("by").enters("Ada");
        Chromium.isForEverybody(page, "bench-survey-typed");
        Chromium.leaves(page, "Enter");

        assertThat(page.locator("#it-says")).isVisible();
        assertThat(points(page)).as("the server draws what the script drew").isEqualTo(drawn);
        Answer match = asked("/api/match", request(order, "survey"));
        assertThat(page.locator(".told .says")).hasText(text(match, "says"));
        for (int hole = 0; hole < WORN.length; hole++) {
            assertThat(page.locator("table")
                            .first()
                            .locator("tbody tr")
                            .nth(hole)
                            .locator("td")
                            .nth(9))
                    .hasText(figure(match.at("cylinders")
                            .items()
                            .get(hole)
                            .at("cleanUp")
                            .at("worst")));
        }
        Chromium.isForEverybody(page, "bench-survey-kept");
        printsWithItsReadings(page, "bench-survey-print");
    }

    /** On paper stands what was read and how it is drawn; buttons and hints are for the screen, and so is what nobody filled in. */
    private static void printsWithItsReadings(Page page, String name) {
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        page.setViewportSize(703, 1000);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target", "screens", name + ".png"))
                .setFullPage(true));
        assertThat(page.locator(id("number:/cylinders/3/grid/readings/2/1"))).isVisible();
        assertThat(page.locator("form .profile svg").nth(3)).isVisible();
        assertThat(page.locator("form button:visible, form .note:visible, form #keys:visible"))
                .hasCount(0);
        assertThat(page.locator("form details:not([open]):visible")).hasCount(0);
        assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))
                .isTrue();
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
    }

    private static void confirms(Page page, long order, String size) {
        Typist typist = new Typist(page);
        assertThat(page.locator("input[name='/size']")).hasValue(size);
        String[] diameters = {"77.6705", "77.6695", "77.670", "77.6702"};
        for (int piston = 0; piston < diameters.length; piston++) {
            typist.at("number:/pistons/" + piston + "/diameter").enters(diameters[piston], "319." + piston);
        }
        typist.isAt("/pistonGauge/name").enters("MIC-1");
        typist.isAt("number:/pistonTemperature").types("20");
        assertThat(page.locator("button:not(.quiet):visible")).hasText(new String[] {"Pair them"});
        typist.sends();
        assertThat(page.locator(".pairing .join")).hasCount(4);
        assertThat(page.locator("button:not(.quiet):visible")).hasText(new String[] {"Confirm"});
        Chromium.isForEverybody(page, "bench-paired");
        typist.at("by").types("Ada");
        typist.presses("Confirm");

        assertThat(page).hasURL(Pattern.compile(".*/orders/" + order + "/hone"));
        assertThat(text(order(order), "state")).isEqualTo("confirmed");
    }

    private static void reads(Page page, long order) {
        List<Answer> holes =
                asked("/api/bench", request(order, "bench")).at("holes").items();
        for (int hole = 0; hole < WORN.length; hole++) {
            Answer planned = holes.get(hole);
            Answer gap = planned.at("ringGaps").items().get(0).at("gap");
            assertThat(page.locator(".far").nth(hole).innerText())
                    .contains(
                            "piston " + text(planned, "tag"),
                            step(planned.at("boreTo"), RoundingMode.HALF_EVEN),
                            step(planned.at("honeTo"), RoundingMode.HALF_EVEN),
                            step(planned.at("window").at("least"), RoundingMode.UP) + " to "
                                    + step(planned.at("window").at("greatest"), RoundingMode.DOWN),
                            step(gap.at("least"), RoundingMode.DOWN) + " to "
                                    + step(gap.at("greatest"), RoundingMode.UP));
            assertThat(page.locator("details tbody tr").nth(hole).textContent())
                    .as("the figures to the last digit")
                    .contains(
                            figure(planned.at("boreTo")),
                            figure(planned.at("honeTo")),
                            figure(planned.at("window").at("least")),
                            figure(planned.at("window").at("greatest")),
                            figure(gap.at("least")),
                            figure(gap.at("greatest")));
        }
        assertThat(
                        (Boolean)
                                page.evaluate(
                                        "[...document.querySelectorAll('.huge')].every(one => parseFloat(getComputedStyle(one).fontSize) >= 32)"))
                .as("figures are read from an arm's length")
                .isTrue();
        Chromium.isForEverybody(page, "bench-hone");
    }

    private static void finishes(Page page, long order) {
        List<Answer> planned =
                Answer.of(paper(order, "bench")).at("answer").at("holes").items();
        Typist typist = new Typist(page);
        typist.at("number:/temperature").types("20");
        typist.at("truth:/roomTemperature").types("yes");
        typist.at("number:/cylinders/0/grid/depths/0").enters("10", "45", "90");
        for (int hole = 0; hole < WORN.length; hole++) {
            String honed = new BigDecimal(figure(planned.get(hole).at("honeTo")))
                    .setScale(3, RoundingMode.HALF_EVEN)
                    .toPlainString();
            typist.enters(honed, honed, honed, honed, honed, honed);
        }
        typist.isAt("by").back();
        typist.isAt("number:/cylinders/3/grid/readings/2/1").enters("77.760");
        typist.sends();
        assertThat(page.locator(".judged")).hasText(new String[] {"✓ pass", "✓ pass", "✓ pass", "✗ hold"});
        assertThat(page.locator(".told .hole").nth(3).locator(".checks .bad").first())
                .containsText("out");
        assertThat(page.locator("form > .act button:not(.quiet)")).hasText(new String[] {"Judge"});
        Chromium.isForEverybody(page, "bench-judged-hold");
        printsWithItsReadings(page, "bench-judged-print");

        String last = "number:/cylinders/3/grid/readings/2/1";
        typist.at(last).types(page.inputValue("[id='number:/cylinders/3/grid/readings/2/0']"));
        typist.at("by").types("Ada");
        typist.presses("Judge and sign");
        Answer judged = asked("/api/finish", request(order, "finish"));
        assertThat(page.locator(".told .says")).hasText(text(judged, "says"));
        for (int hole = 0; hole < WORN.length; hole++) {
            Answer clearance = judged.at("holes").items().get(hole).at("clearance");
            assertThat(page.locator(".told .hole").nth(hole)).containsText("Clearance" + shown(clearance));
        }
        Chromium.isForEverybody(page, "bench-judged-pass");
    }

    @Test
    void aSlipIsTakenBackAndWhatCannotBeMeasuredTakesOneKey() {
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/bench/survey?engine=OSTRAVEL-4", page -> {
                Typist typist = new Typist(page);
                String first = "number:/cylinders/0/grid/readings/0/0";
                String second = "number:/cylinders/0/grid/readings/0/1";
                typist.at(first).types("77.2");
                page.keyboard().press("Enter");
                assertThat(page.locator(id(second))).isFocused();
                page.keyboard().press("Shift+Enter");
                assertThat(page.locator(id(first))).isFocused();
                page.keyboard().type("99.9");
                page.keyboard().press("Escape");
                assertThat(page.locator(id(first))).hasValue("77.2");
                page.keyboard().type("-");
                assertThat(page.locator(id(first))).hasValue("-");
                assertThat(page.locator(id(second))).isFocused();
                page.keyboard().type("7.729");
                page.keyboard().press("Control+Enter");
                assertThat(page.locator(id(second) + "[aria-invalid]")).hasValue("7.729");
                assertThat(page.locator(id(second + "~"))).containsText("Perhaps 77.29");
                assertThat(page.locator(id(first))).hasValue("-");
                Chromium.isForEverybody(page, "bench-slip");
            });
        }
    }

    /** Whoever takes back what was typed over a dash stays there. */
    @Test
    void aDashThatIsTakenBackLeavesTheCellWhereItIs() {
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/bench/survey?engine=OSTRAVEL-4", page -> {
                Typist typist = new Typist(page);
                String first = "number:/cylinders/0/grid/readings/0/0";
                typist.at(first).types("-");
                typist.back();
                typist.isAt(first).types("77.2");
                page.keyboard().press("Escape");
                assertThat(page.locator(id(first))).hasValue("-");
                typist.isAt(first);
            });
        }
    }

    /** A link pressed by mistake costs a whole block of readings; what was sent is lost by nothing. */
    @Test
    void theBrowserAsksBeforeReadingsThatWereNotSentAreLost() {
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/bench/survey?engine=OSTRAVEL-4", page -> {
                List<String> asked = new ArrayList<>();
                page.onDialog(dialog -> {
                    asked.add(dialog.type());
                    dialog.accept();
                });
                Typist typist = new Typist(page);
                typist.at("number:/temperature").types("20");
                page.reload();
                assertThat(asked).as("no reading is typed").isEmpty();
                typist.at("number:/cylinders/0/grid/readings/0/0").types("77.295");
                page.reload();
                assertThat(asked).containsExactly("beforeunload");
                typist.at("number:/cylinders/0/grid/readings/0/0").types("77.295");
                typist.sends();
                assertThat(asked).as("it is sent").hasSize(1);
            });
        }
    }

    @Test
    void withAFingerWhatCannotBeMeasuredTakesOneButtonAndTheNextReadingIsThere() {
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.onATelephoneAt("/bench/survey?engine=OSTRAVEL-4", page -> {
                String first = "number:/cylinders/0/grid/readings/0/0";
                String second = "number:/cylinders/0/grid/readings/0/1";
                Locator cannot = page.locator("button.cannot").first();
                page.locator(id(first)).tap();
                cannot.tap();
                assertThat(page.locator(id(first))).hasValue("–");
                assertThat(page.locator(id(second))).isFocused();
                cannot.tap();
                assertThat(page.locator(id(second))).hasValue("–");
            });
            chromium.at(
                    "/bench/survey?engine=OSTRAVEL-4",
                    page -> assertThat(page.locator("button.cannot").first()).isHidden());
        }
    }

    @Test
    void oneDiameterOfAHoleIsDrawnAsItIsTypedAndAsTheServerDrawsIt() {
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/bench/survey?engine=OSTRAVEL-4", page -> {
                page.locator(id("number:/cylinders/1/diameter")).fill("77.310");
                Locator alone = page.locator("form path.alone");
                assertThat(alone).hasCount(1);
                String drawn = alone.getAttribute("d");
                page.locator(id("number:/cylinders/1/diameter")).focus();
                Chromium.leaves(page, "Control+Enter");
                assertThat(alone).hasCount(1);
                assertThat(alone).hasAttribute("d", drawn);
                assertThat(page.locator("[data-profile='1'] title")).containsText("one diameter, 77.310");
            });
        }
    }

    @Test
    void whatDidNotCleanUpIsSurveyedAnewByKeyboard() {
        Orders order = Orders.quoted("BB-2");
        order.does("accept", "{\"quote\":1,\"mayWait\":true}").statusCode(200);
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/orders/" + order.number() + "/did-not-clean-up", page -> {
                assertThat(page.locator("h1")).containsText("Order " + order.number());
                Chromium.isForEverybody(page, "bench-did-not-clean-up");
                Typist typist = new Typist(page);
                typist.at("number:/cylinders/0/diameter").types("53.900");
                typist.at("by").types("Ada");
                typist.sends();
                assertThat(page.locator("#it-says")).isVisible();
                assertThat(page.locator(".told .says"))
                        .hasText(text(asked("/api/match", request(order.number(), "survey")), "says"));
            });
        }
        assertThat(text(order(order.number()), "state")).isEqualTo("surveyed");
    }

    /** Somebody whose other hand holds a gauge. */
    private static final class Typist {

        private static final int FIELDS = 250;

        private final Page page;

        Typist(Page page) {
            this.page = page;
        }

        /** Goes on by Tab until a field is reached; nobody goes over the end of the page for it. */
        Typist at(String field) {
            int from = place();
            for (int i = 0; i < FIELDS && place() >= from; i++) {
                if (field.equals(page.evaluate("document.activeElement.id"))) {
                    return this;
                }
                from = place();
                page.keyboard().press("Tab");
            }
            throw new AssertionError(field + " is not reached by Tab");
        }

        /** Where on the page the keyboard is. */
        private int place() {
            return (Integer) page.evaluate("[...document.querySelectorAll('*')].indexOf(document.activeElement)");
        }

        /** Where Enter led to. */
        Typist isAt(String field) {
            assertThat(page.locator(id(field))).isFocused();
            return this;
        }

        void types(String text) {
            if ((Boolean) page.evaluate("document.activeElement.matches('input')")) {
                page.keyboard().press("Control+A");
            }
            page.keyboard().type(text);
        }

        void enters(String... readings) {
            for (String reading : readings) {
                types(reading);
                page.keyboard().press("Enter");
            }
        }

        void back() {
            page.keyboard().press("Shift+Enter");
        }

        void sends() {
            Chromium.leaves(page, "Control+Enter");
        }

        void presses(String button) {
            for (int i = 0; i < FIELDS; i++) {
                if (button.equals(page.evaluate("document.activeElement.textContent"))) {
                    Chromium.leaves(page, "Enter");
                    return;
                }
                page.keyboard().press("Tab");
            }
            throw new AssertionError(button + " is not reached by Tab");
        }
    }

    private static String id(String field) {
        return "[id='" + field + "']";
    }

    @SuppressWarnings("unchecked") // what the script gives is a list of texts
    private static List<String> points(Page page) {
        return (List<String>) page.evaluate(
                "[...document.querySelectorAll('form polyline')].map(line => line.getAttribute('points'))");
    }

    private static long opened() {
        return Orders.opened("OSTRAVEL-4", "rebuild", "BB-1").number();
    }

    /** What the desk does between survey and bench. */
    private static String sold(long order) {
        String path = "/api/orders/" + order;
        String size = text(sent(path + "/quotes", "2", "{}").at("offer"), "size");
        sent(path + "/accept", "3", "{\"quote\":1}");
        return size;
    }

    private static Answer sent(String path, String version, String body) {
        return Answer.of(given().contentType(ContentType.JSON)
                .header("Idempotency-Key", UUID.randomUUID().toString())
                .header("If-Match", "\"" + version + "\"")
                .queryParam("by", "Ada")
                .body(body)
                .post(path)
                .asString());
    }

    private static Answer order(long order) {
        return Answer.of(given().get("/api/orders/" + order).asString());
    }

    /** The last paper of a kind. */
    private static String paper(long order, String kind) {
        List<Integer> papers = given().get("/api/orders/" + order + "/papers")
                .jsonPath()
                .getList("findAll { it.kind == '" + kind + "' }.id");
        return given().get("/api/orders/" + order + "/papers/" + papers.get(papers.size() - 1))
                .asString();
    }

    /** The question of that paper, as it was sent. */
    private static String request(long order, String kind) {
        try {
            return new ObjectMapper()
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .readTree(paper(order, kind))
                    .get("request")
                    .toString();
        } catch (JsonProcessingException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static Answer asked(String path, String body) {
        return Answer.of(given().contentType(ContentType.JSON)
                .body(body)
                .post(path)
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    private static String text(Answer answer, String member) {
        return answer.at(member).text().orElseThrow();
    }

    /** A range as it is shown: one figure where its ends are the same. */
    private static String shown(Answer range) {
        String least = figure(range.at("least"));
        String greatest = figure(range.at("greatest"));
        return least.equals(greatest) ? greatest : least + " to " + greatest;
    }

    /** A length to the step of a gauge. */
    private static String step(Answer length, RoundingMode rounded) {
        return new BigDecimal(figure(length)).setScale(3, rounded).toPlainString();
    }

    /** A length as the answer wrote it. */
    private static String figure(Answer length) {
        return text(length, "value");
    }
}
