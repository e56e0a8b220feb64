package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.borewright.catalog.Revision;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What fits and what it costs have a revision each, and each changes with its own files alone. */
class FingerprintTest {

    @TempDir
    Path path;

    private Folder folder;
    private Revision before;

    @BeforeEach
    void readOnce() {
        folder = Folder.in(path);
        before = folder.delivery().revision();
    }

    @Test
    void bothAreTwelveHexDigits() {
        assertThat(before.fit()).matches("[0-9a-f]{12}");
        assertThat(before.offers()).matches("[0-9a-f]{12}").isNotEqualTo(before.fit());
    }

    @Test
    void theSameFilesGiveTheSameRevision() {
        assertThat(folder.delivery().revision()).isEqualTo(before);
    }

    @Test
    void aNewPriceLeavesWhatFitsAlone() {
        Revision after =
                folder.cell("prices.csv", 2, "price", "47.01").delivery().revision();

        assertThat(after.fit()).isEqualTo(before.fit());
        assertThat(after.offers()).isNotEqualTo(before.offers());
    }

    @Test
    void aNewDimensionLeavesPricesAlone() {
        Revision after =
                folder.cell("rings.csv", 2, "wall_least_mm", "2.451").delivery().revision();

        assertThat(after.fit()).isNotEqualTo(before.fit());
        assertThat(after.offers()).isEqualTo(before.offers());
    }

    /** An answer stands on the gauge that its readings were taken with. */
    @Test
    void aNewCalibrationIsAnotherStateOfWhatFits() {
        Revision after = folder.cell("gauges.csv", 2, "uncertainty_mm", "0.005")
                .delivery()
                .revision();

        assertThat(after.fit()).isNotEqualTo(before.fit());
        assertThat(after.offers()).isEqualTo(before.offers());
    }

    @Test
    void aTextThatMovesIntoTheNextCellIsAnotherCatalogue() {
        Revision one = folder.line("withdrawn.csv", 2, "HVT2-GKA,replaced,HVT2-GKB,AB")
                .delivery()
                .revision();
        Revision other = folder.line("withdrawn.csv", 2, "HVT2-GKA,replaced,HVT2-GKBA,B")
                .delivery()
                .revision();

        assertThat(other.fit()).isNotEqualTo(one.fit());
    }
}
