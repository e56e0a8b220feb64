package org.borewright.catalog.load;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.nio.file.Path;

/** One of two starts on one database file: the one beside the demo catalogue. */
@QuarkusTest
@TestProfile(StartBesideDemoFilesTest.BesideDemoFiles.class)
class StartBesideDemoFilesTest extends TwoStarts {

    private static final Path FILES = Path.of("catalog-data");

    StartBesideDemoFilesTest() {
        super(FILES);
    }

    /** The settings of this start. */
    public static class BesideDemoFiles extends Start {

        public BesideDemoFiles() {
            super(FILES);
        }
    }
}
