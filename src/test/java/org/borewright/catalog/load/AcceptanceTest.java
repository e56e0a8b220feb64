package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.store.CatalogRows;
import org.borewright.catalog.store.Shelves;
import org.borewright.catalog.store.row.CylinderRow;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A delivery is taken in whole or not at all. */
@QuarkusTest
class AcceptanceTest {

    @TempDir
    Path folder;

    @Inject
    Acceptance acceptance;

    @Inject
    Shelves shelves;

    private Catalogue before;

    /** As the tables say it, whatever other tests moved on the shelf. */
    @BeforeEach
    void remember() {
        shelves.reload();
        before = shelves.catalogue();
    }

    @AfterEach
    void putTheDemoBack() {
        acceptance.accept(Delivery.from(Path.of("catalog-data")));
    }

    @Test
    void aBadDeliveryChangesNeitherTablesNorMemory() {
        Delivery bad = Folder.in(folder).cell("stock.csv", 2, "on_hand", "-1").delivery();

        assertThat(acceptance.accept(bad)).isFalse();

        assertThat(shelves.catalogue()).isSameAs(before);
        shelves.reload();
        assertThat(shelves.catalogue()).isEqualTo(before);
    }

    @Test
    void aGoodDeliveryTakesThePlaceOfAllThatWasThere() {
        Delivery small = Folder.in(folder).delivery();

        assertThat(acceptance.accept(small)).isTrue();

        assertThat(shelves.catalogue().shelves()).containsOnlyKeys("HALVERN-T2", "OSTRAVEL-4");
        assertThat(shelves.catalogue().revision()).isEqualTo(small.revision()).isNotEqualTo(before.revision());
        assertThat(shelves.catalogue().loadedAt()).isAfter(before.loadedAt());
    }

    @Test
    void rowsThatTheTablesRefuseHalfwayLeaveWhatWasThere() {
        CylinderRow ofNoEngine = new CylinderRow();
        ofNoEngine.engine = "NO-SUCH-ENGINE";

        assertThatThrownBy(() -> shelves.replace(CatalogRows.of(List.of(ofNoEngine)), before.revision(), Instant.EPOCH))
                .isNotNull();

        shelves.reload();
        assertThat(shelves.catalogue()).isEqualTo(before);
    }
}
