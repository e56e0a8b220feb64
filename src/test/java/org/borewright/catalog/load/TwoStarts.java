package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.store.Shelves;
import org.borewright.database.TestDatabase;
import org.junit.jupiter.api.Test;

/**
 * Two starts of the service on one database, each beside catalogue files of its own. Whichever comes first loads its files; the
 * other finds that catalogue kept, leaves its own files alone, and says so.
 */
abstract class TwoStarts {

    /** Each start has its own class loader, so that only the properties of the machine are common to both. */
    private static final String DATABASE = "borewright.test.database";

    private static final String KEPT = "borewright.test.kept";

    @Inject
    Shelves shelves;

    private final Path files;

    TwoStarts(Path files) {
        this.files = files;
    }

    @Test
    void theFirstStartLoadsItsFilesAndTheSecondKeepsThemAndWarnsOfItsOwn() throws IOException {
        Catalogue catalogue = shelves.catalogue();
        String loaded = "%s loaded %s".formatted(catalogue.revision(), catalogue.loadedAt());
        String kept = System.getProperty(KEPT);
        if (kept == null) {
            assertThat(catalogue.revision()).isEqualTo(Delivery.from(files).revision());
            assertThat(log(files)).content().doesNotContain("keeps catalogue");
            System.setProperty(KEPT, loaded);
        } else {
            assertThat(catalogue.revision()).isNotEqualTo(Delivery.from(files).revision());
            assertThat(loaded).isEqualTo(kept);
            assertThat(log(files))
                    .content()
                    .contains("WARN", Delivery.from(files).passedOver(catalogue.revision(), files));
        }
    }

    private static Path log(Path files) {
        return Path.of(System.getProperty(DATABASE) + "-" + files.getFileName() + ".log");
    }

    /** One of the two starts. */
    abstract static class Start implements QuarkusTestProfile {

        private final Path files;

        Start(Path files) {
            this.files = files;
        }

        @Override
        public Map<String, String> getConfigOverrides() {
            if (System.getProperty(DATABASE) == null) {
                System.setProperty(DATABASE, emptyFolder().resolve("borewright").toString());
            }
            Map<String, String> settings = new HashMap<>(Map.of(
                    "quarkus.log.file.enabled",
                    "true",
                    "quarkus.log.file.path",
                    log(files).toString(),
                    "borewright.catalog.folder",
                    files.toString()));
            settings.putAll(
                    TestDatabase.isPostgres()
                            ? TestDatabase.own(TestDatabase.TWO_STARTS)
                            : Map.of("quarkus.datasource.jdbc.url", "jdbc:h2:file:" + System.getProperty(DATABASE)));
            return settings;
        }

        private static Path emptyFolder() {
            try {
                return Files.createTempDirectory("two-starts");
            } catch (IOException full) {
                throw new UncheckedIOException(full);
            }
        }
    }
}
