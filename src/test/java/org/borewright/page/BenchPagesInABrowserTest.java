package org.borewright.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import org.borewright.scenario.Orders;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;

/** The card, the shelf and the life of a block, as a person sees them. */
@QuarkusTest
@TestProfile(OwnShop.class)
class BenchPagesInABrowserTest {

    /** Of the hone-to of a card, in pixels, so that it is read at an arm's length. */
    private static final double LEAST_FIGURE = 32;

    /** Of the window and the ring gaps, two figures to a place. */
    private static final double LEAST_LIMIT = 28;

    private static final int A4_LESS_MARGINS = (int) (186 / 25.4 * 96);

    @TestHTTPResource("/")
    URI service;

    /** What is cut at the side without a shade that stays there while the table moves below it. */
    private static final String GOES_ON_UNSEEN = "[...document.querySelectorAll('main *')]"
            + ".filter(it => it.scrollWidth > it.clientWidth && getComputedStyle(it).overflowX === 'auto')"
            + ".filter(it => getComputedStyle(it).backgroundAttachment !== 'local, local, scroll, scroll, scroll')"
            + ".map(it => it.outerHTML.slice(0, 100))";

    @Test
    void theCardIsReadAtAnArmsLengthAndPrints() {
        Orders order = confirmed("BS-1");
        Orders quoted = Orders.quoted("BS-2");
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/orders/" + order.number() + "/card", page -> {
                Chromium.isForEverybody(page, "card");
                List<Locator> large = page.locator("td.large").all();
                assertThat(large)
                        .hasSize(3)
                        .allSatisfy(figure -> assertThat(pixels(figure)).isGreaterThanOrEqualTo(LEAST_FIGURE));
                assertThat(page.locator(".middle").all())
                        .as("the window, and each ring gap")
                        .hasSizeGreaterThan(2)
                        .allSatisfy(figure -> assertThat(pixels(figure)).isGreaterThanOrEqualTo(LEAST_LIMIT));
                print(page, "card-print");
                assertThat(page.locator("header nav")).isHidden();
                assertThat(page.locator(".scan svg")).isVisible();
                page.locator("td.pencil").all().forEach(box -> assertThat(box).isVisible());
            });
            chromium.onATelephoneAt(
                    "/orders/" + order.number() + "/card",
                    page -> assertThat((List<?>) page.evaluate(GOES_ON_UNSEEN))
                            .as("tables that go on sideways, and nothing says so")
                            .isEmpty());
            chromium.at("/orders/" + quoted.number() + "/card", page -> Chromium.isForEverybody(page, "card-planned"));
        }
    }

    private static double pixels(Locator figure) {
        return Double.parseDouble(((String) figure.evaluate("it => getComputedStyle(it).fontSize")).replace("px", ""));
    }

    /** As it comes out of a printer; A4 is narrower than Letter, and less its margins 186 mm are left of it. */
    private static void print(Page page, String name) {
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        page.setViewportSize(A4_LESS_MARGINS, 1123);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target", "screens", name + ".png"))
                .setFullPage(true));
        assertThat((List<?>) page.evaluate("[...document.querySelectorAll('main *')]"
                        + ".filter(it => it.getBoundingClientRect().right > window.innerWidth + 1)"
                        + ".map(it => it.outerHTML.slice(0, 100))"))
                .as("what sticks out of the paper")
                .isEmpty();
    }

    @Test
    void theShelfIsChosenByEngineWithTheKeyboard() {
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/shelf", page -> {
                Chromium.isForEverybody(page, "shelf");
                page.locator("#engine").focus();
                page.keyboard().type("Halvern Reed");
                page.keyboard().press("Tab");
                page.keyboard().press("Enter");
                assertThat(page.locator("h1")).containsText("HALVERN-131");
                Chromium.isForEverybody(page, "shelf-of-an-engine");
            });
        }
    }

    @Test
    void theLifeOfABlockIsFoundByItsTagWithTheKeyboard() {
        Orders order = confirmed("BS-3");
        order.does("finish", Orders.HONED).statusCode(200);
        order.does("release", "").statusCode(200);
        Orders again = Orders.opened("rebuild", "BS-3");
        again.does("survey", Orders.SINGLE_WORN.replace("standard", "+0.50").replace("53.720", "54.210"))
                .statusCode(200);
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/blocks", page -> {
                Chromium.isForEverybody(page, "blocks");
                page.locator("#tag").focus();
                page.keyboard().type("BS-3");
                page.keyboard().press("Enter");
                assertThat(page.locator("h1")).containsText("BS-3");
                assertThat(page.locator("svg.life rect")).hasCount(3);
                Chromium.isForEverybody(page, "block");
            });
            chromium.at("/blocks?tag=nobody", page -> Chromium.isForEverybody(page, "blocks-nobody"));
        }
    }

    private static Orders confirmed(String tag) {
        List.of("NH-H131-CB050", "HV131-SE", "HV131-GK")
                .forEach(part -> Orders.arrive(part, 2).statusCode(200));
        Orders order = Orders.quoted(tag);
        order.does("accept", "{\"quote\":1}").statusCode(200);
        order.does("confirm", Orders.PISTON_IN_HAND).statusCode(200);
        return order;
    }
}
