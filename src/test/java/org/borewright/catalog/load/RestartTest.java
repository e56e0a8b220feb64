package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import org.borewright.catalog.store.Shelves;
import org.junit.jupiter.api.ClassOrderer;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestClassOrder;

/** Two starts of the service on one database file: the first loads the catalogue, the second keeps it. */
@QuarkusTest
@TestClassOrder(ClassOrderer.OrderAnnotation.class)
class RestartTest {

    /** Each start has its own class loader, so that only the properties of the machine are common to both. */
    private static final String LOADED_AT = "borewright.test.loaded-at";

    @Inject
    Shelves shelves;

    @Nested
    @Order(1)
    @TestProfile(OnAnEmptyFile.class)
    class AtTheFirstStart {

        @Test
        void theCatalogueIsLoadedFromItsFiles() {
            assertThat(shelves.revision())
                    .isEqualTo(Delivery.from(Path.of("catalog-data")).revision());
            System.setProperty(LOADED_AT, shelves.catalogue().loadedAt().toString());
        }
    }

    @Nested
    @Order(2)
    @TestProfile(WithoutItsFiles.class)
    class AtTheSecondStart {

        @Test
        void theCatalogueIsThereAsItWasLoadedThoughItsFilesAreGone() {
            assertThat(shelves.revision())
                    .isEqualTo(Delivery.from(Path.of("catalog-data")).revision());
            assertThat(shelves.catalogue().loadedAt()).isEqualTo(Instant.parse(System.getProperty(LOADED_AT)));
        }
    }

    /** The first start: nothing is kept yet. */
    public static class OnAnEmptyFile implements QuarkusTestProfile {

        private static final String FILE = "borewright.test.database";

        @Override
        public Map<String, String> getConfigOverrides() {
            System.setProperty(FILE, emptyFolder().resolve("kept").toString());
            return database();
        }

        static Map<String, String> database() {
            return Map.of("quarkus.datasource.jdbc.url", "jdbc:h2:file:" + System.getProperty(FILE));
        }

        private static Path emptyFolder() {
            try {
                return Files.createTempDirectory("restart");
            } catch (IOException full) {
                throw new UncheckedIOException(full);
            }
        }
    }

    /** The second start: a load would find no file and refuse. */
    public static class WithoutItsFiles implements QuarkusTestProfile {

        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "quarkus.datasource.jdbc.url",
                    OnAnEmptyFile.database().get("quarkus.datasource.jdbc.url"),
                    "borewright.catalog.folder",
                    "target/no-such-folder");
        }
    }
}
