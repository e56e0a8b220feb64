package org.borewright.catalog.load;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.nio.file.Path;

/** One of two starts on one database file: the one beside the small catalogue. */
@QuarkusTest
@TestProfile(StartBesideSmallFilesTest.BesideSmallFiles.class)
class StartBesideSmallFilesTest extends TwoStarts {

    private static final Path FILES = Path.of("src/test/resources/catalog-small");

    StartBesideSmallFilesTest() {
        super(FILES);
    }

    /** The settings of this start. */
    public static class BesideSmallFiles extends Start {

        public BesideSmallFiles() {
            super(FILES);
        }
    }
}
