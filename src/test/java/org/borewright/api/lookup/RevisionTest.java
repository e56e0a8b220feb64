package org.borewright.api.lookup;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.borewright.api.lookup.Counter.answer;
import static org.borewright.api.lookup.Counter.ask;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.borewright.catalog.load.Delivery;
import org.borewright.catalog.store.Shelves;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept holds as long as what fits stays the same, whatever becomes of prices; and no longer. */
@QuarkusTest
class RevisionTest {

    private static final Path DEMO = Path.of("catalog-data");
    private static final List<String> KEPT = List.of(
            "/api/engines",
            "/api/engines/OSTRAVEL-4",
            "/api/engines/OSTRAVEL-4/sizes/+0.50/fit",
            "/api/gauges",
            "/api/gauges/BG-1");

    @TempDir
    Path folder;

    @Inject
    Shelves shelves;

    @AfterEach
    void putTheDemoBack() {
        load(DEMO);
    }

    private void load(Path files) {
        Delivery delivery = Delivery.from(files);
        assertThat(delivery.bad()).isEmpty();
        shelves.replace(delivery.rows(), delivery.revision(), Instant.EPOCH);
        shelves.reload();
    }

    private void loadWith(String file, String before, String after) throws IOException {
        try (Stream<Path> files = Files.list(DEMO)) {
            for (Path each : files.toList()) {
                Files.copy(each, folder.resolve(each.getFileName()));
            }
        }
        String text = Files.readString(folder.resolve(file));
        assertThat(text).containsOnlyOnce(before);
        Files.writeString(folder.resolve(file), text.replace(before, after));
        load(folder);
    }

    private static Response askAgain(String path, String tag) {
        return given().urlEncodingEnabled(false).header("If-None-Match", tag).get(path);
    }

    private static List<String> tags() {
        return KEPT.stream().map(path -> ask(path).header("ETag")).toList();
    }

    @Test
    void anotherPriceLeavesWhatIsKeptAndIsShownAtOnce() throws IOException {
        List<String> tags = tags();
        byte[] fit = ask(KEPT.get(2)).asByteArray();
        String offers = answer("/api/parts/NH-OS4-050").at("/revision/offers").asText();

        loadWith("prices.csv", "NH-OS4-050,46.00,EUR", "NH-OS4-050,47.10,EUR");

        assertThat(tags()).isEqualTo(tags);
        assertThat(askAgain(KEPT.get(2), tags.get(2)).statusCode()).isEqualTo(304);
        assertThat(ask(KEPT.get(2)).asByteArray()).isEqualTo(fit);
        assertThat(answer("/api/parts/NH-OS4-050").at("/offer/price/amount").decimalValue())
                .isEqualByComparingTo("47.10");
        assertThat(answer("/api/engines/OSTRAVEL-4/sizes/+0.50/offers")
                        .at("/offers/0/offer/price/amount")
                        .decimalValue())
                .isEqualByComparingTo("47.10");
        assertThat(answer("/api/parts/NH-OS4-050").at("/revision/offers").asText())
                .isNotEqualTo(offers);
    }

    @Test
    void anotherClearanceEndsAllThatIsKept() throws IOException {
        List<String> tags = tags();

        loadWith(
                "pistons.csv",
                "NH-OS4-050,NORHEIM-OS4,+0.50,any,,77.665,77.675",
                "NH-OS4-050,NORHEIM-OS4,+0.50,any,,77.665,77.674");

        for (int i = 0; i < KEPT.size(); i++) {
            Response again = askAgain(KEPT.get(i), tags.get(i));
            assertThat(again.statusCode()).isEqualTo(200);
            assertThat(again.header("ETag")).isNotEqualTo(tags.get(i));
        }
        assertThat(answer(KEPT.get(2)).at("/choices/0/largestFinish/nm").longValue())
                .isEqualTo(77_744_000);
        load(DEMO);
        assertThat(tags()).isEqualTo(tags);
    }
}
