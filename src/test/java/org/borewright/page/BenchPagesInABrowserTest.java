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

    @TestHTTPResource("/")
    URI service;

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
                        .allSatisfy(figure -> assertThat(Double.parseDouble(
                                        ((String) figure.evaluate("it => getComputedStyle(it).fontSize"))
                                                .replace("px", "")))
                                .isGreaterThanOrEqualTo(LEAST_FIGURE));
                print(page, "card-print");
                assertThat(page.locator("header nav")).isHidden();
                assertThat(page.locator(".scan svg")).isVisible();
            });
            chromium.at("/orders/" + quoted.number() + "/card", page -> Chromium.isForEverybody(page, "card-planned"));
        }
    }

    /** As it comes out of a printer: A4 at 96 dots to the inch. */
    private static void print(Page page, String name) {
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        page.setViewportSize(794, 1123);
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(Path.of("target", "screens", name + ".png"))
                .setFullPage(true));
        page.pdf(new Page.PdfOptions()
                .setPath(Path.of("target", "screens", name + ".pdf"))
                .setFormat("A4"));
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
