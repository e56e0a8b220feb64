package org.borewright.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * A real browser, that of the machine: {@code /usr/bin/chromium}, or the one that the property {@code borewright.test.browser} names. A
 * class that opens it where there is none is passed over, and says so.
 */
public final class Chromium implements AutoCloseable {

    private static final Path FOUND = Path.of(System.getProperty("borewright.test.browser", "/usr/bin/chromium"));
    private static final Path SCREENS = Path.of("target", "screens");
    private static final List<Integer> WIDTHS = List.of(360, 900, 1600);
    private static final int HEIGHT = 900;

    /** Words in pictures, which axe does not look at: black is seen by day alone. */
    private static final String UNLIKE_THE_INK = """
            [...document.querySelectorAll('svg text')]
                .filter(it => matchMedia('(prefers-color-scheme: dark)').matches && getComputedStyle(it).fill === 'rgb(0, 0, 0)')
                .map(it => it.outerHTML)""";

    private final Playwright playwright;
    private final Browser browser;
    private final String address;

    private Chromium(Playwright playwright, Browser browser, String address) {
        this.playwright = playwright;
        this.browser = browser;
        this.address = address;
    }

    /** Opens it for pages of the service at this port of the machine. */
    public static Chromium open(int port) {
        boolean there = Files.isExecutable(FOUND);
        if (!there) {
            System.out.println("No browser at " + FOUND + ": what only a browser shows of the pages is not tried.");
        }
        assumeTrue(there, "a browser at " + FOUND);
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(FOUND)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
        return new Chromium(playwright, browser, "http://127.0.0.1:" + port);
    }

    /** Looks at a page. What the policy of the page forbids, or a script gets wrong, is a fault of the page. */
    public void at(String path, Consumer<Page> look) {
        at(path, context(), look);
    }

    private void at(String path, Browser.NewContextOptions how, Consumer<Page> look) {
        try (BrowserContext context = browser.newContext(how)) {
            Page page = context.newPage();
            List<String> complaints = new ArrayList<>();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error") && !message.text().contains("the server responded with a status")) {
                    complaints.add(message.text());
                }
            });
            page.onPageError(complaints::add);
            page.navigate(address + path);
            look.accept(page);
            assertThat(complaints).as("what the browser complains of").isEmpty();
        }
    }

    /** The same on a telephone, where there is a finger and no keyboard. */
    public void onATelephoneAt(String path, Consumer<Page> look) {
        at(
                path,
                context()
                        .setViewportSize(WIDTHS.get(0), HEIGHT)
                        .setHasTouch(true)
                        .setIsMobile(true),
                look);
    }

    /** Presses a key that leads to another page, and looks at nothing before that is there and its scripts have run. */
    public static void leaves(Page page, String key) {
        AtomicInteger shown = new AtomicInteger();
        Consumer<Page> counts = there -> shown.incrementAndGet();
        page.onDOMContentLoaded(counts);
        page.keyboard().press(key);
        page.waitForCondition(() -> shown.get() > 0);
        page.offDOMContentLoaded(counts);
        page.waitForLoadState();
    }

    private static Browser.NewContextOptions context() {
        return new Browser.NewContextOptions()
                .setViewportSize(WIDTHS.get(1), HEIGHT)
                .setLocale("en-GB");
    }

    /**
     * Whether everybody can use the page as it stands, by daylight and at night, and nothing of it sticks out sideways; with a picture of
     * it at each width, named so, below {@code target/screens}.
     */
    public static void isForEverybody(Page page, String name) {
        for (int width : WIDTHS) {
            page.setViewportSize(width, HEIGHT);
            assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"))
                    .as("%s fits %d pixels", name, width)
                    .isTrue();
            page.screenshot(new Page.ScreenshotOptions()
                    .setPath(SCREENS.resolve(name + "-" + width + ".png"))
                    .setFullPage(true));
        }
        page.setViewportSize(WIDTHS.get(1), HEIGHT);
        for (ColorScheme scheme : List.of(ColorScheme.DARK, ColorScheme.LIGHT)) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
            if (scheme == ColorScheme.DARK) {
                page.screenshot(new Page.ScreenshotOptions()
                        .setPath(SCREENS.resolve(name + "-dark.png"))
                        .setFullPage(true));
            }
            assertThat(axe(page, scheme).analyze().getViolations())
                    .as("%s, %s", name, scheme)
                    .extracting(Chromium::said)
                    .isEmpty();
            assertThat((List<?>) page.evaluate(UNLIKE_THE_INK))
                    .as("words in pictures of %s that are not written in an ink of its palette, %s", name, scheme)
                    .isEmpty();
        }
    }

    /** At night nothing but the colours is another. */
    private static AxeBuilder axe(Page page, ColorScheme scheme) {
        AxeBuilder all = new AxeBuilder(page);
        return scheme == ColorScheme.DARK ? all.withRules(List.of("color-contrast")) : all;
    }

    private static String said(Rule rule) {
        return rule.getId() + ": "
                + rule.getNodes().stream().map(node -> node.getHtml()).toList();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
