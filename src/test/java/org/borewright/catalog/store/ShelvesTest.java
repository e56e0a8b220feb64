package org.borewright.catalog.store;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.load.Delivery;
import org.junit.jupiter.api.Test;

/** What comes out of the tables is what went in from the files. */
@QuarkusTest
class ShelvesTest {

    private static final Delivery DEMO = Delivery.from(Path.of("catalog-data"));

    @Inject
    Shelves shelves;

    private Catalogue ofFiles() {
        return Stocktaking.of(DEMO.rows(), DEMO.revision(), shelves.catalogue().loadedAt());
    }

    @Test
    void everyShelfOfTheTablesIsTheShelfOfTheFiles() {
        assertThat(shelves.catalogue().shelves()).isEqualTo(ofFiles().shelves()).hasSizeGreaterThanOrEqualTo(10);
    }

    @Test
    void listingsAndOffersOfTheTablesAreThoseOfTheFiles() {
        assertThat(shelves.catalogue().listings()).isEqualTo(ofFiles().listings());
        assertThat(shelves.catalogue().offers()).isEqualTo(ofFiles().offers());
        assertThat(shelves.catalogue().revision()).isEqualTo(DEMO.revision());
    }

    @Test
    void enginesAreSortedByCode() {
        assertThat(shelves.catalogue().engines())
                .extracting(engine -> engine.code())
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @Test
    void whatNothingIsCalledIsNotThere() {
        assertThat(shelves.catalogue().shelf("NO-SUCH-ENGINE")).isEmpty();
        assertThat(shelves.catalogue().listing(new PartNumber("NO-SUCH-PART"))).isEmpty();
    }

    @Test
    void takingTheTablesIntoMemoryAgainChangesNothing() {
        Catalogue before = shelves.catalogue();

        assertThat(shelves.reload()).isTrue();

        assertThat(shelves.catalogue()).isEqualTo(before);
    }
}
