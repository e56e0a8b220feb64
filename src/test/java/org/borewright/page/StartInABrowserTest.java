package org.borewright.page;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The first page, as a person sees it. */
@QuarkusTest
class StartInABrowserTest {

    @TestHTTPResource("/")
    URI service;

    @Test
    void theListNarrowsWhileWordsAreTyped() {
        try (Chromium chromium = Chromium.open(service.getPort())) {
            chromium.at("/", page -> {
                Chromium.isForEverybody(page, "start");
                Locator left = page.locator("#found > li:visible");
                assertThat(left).hasCount(12);
                page.locator("#words").focus();
                page.keyboard().type("ost in");
                assertThat(left).hasCount(2);
                assertThat(page.locator("#count")).hasText("2 engines");
                Chromium.leaves(page, "Enter");
                assertThat(page).hasURL(Pattern.compile(".*words=ost\\+in"));
                assertThat(left).hasCount(2);
                page.locator("#words").fill("nobody");
                Chromium.leaves(page, "Enter");
                assertThat(page).hasURL(Pattern.compile(".*words=nobody"));
                Chromium.isForEverybody(page, "start-nothing-found");
            });
            chromium.at("/nowhere", page -> Chromium.isForEverybody(page, "nowhere"));
        }
    }
}
