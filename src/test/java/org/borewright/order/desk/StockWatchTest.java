package org.borewright.order.desk;

import static org.assertj.core.api.Assertions.assertThatCode;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import org.borewright.catalog.store.Shelves;
import org.borewright.scenario.OwnShop;
import org.junit.jupiter.api.Test;

/** The watch of a machine that starts on a database where stock was moved before. */
@QuarkusTest
@TestProfile(OwnShop.class)
class StockWatchTest {

    @Inject
    StockRoom room;

    @Test
    void itWaitsUntilThereIsACatalogue() {
        room.receive("HV131-GK", 1, "Ada");

        assertThatCode(new StockWatch(new Shelves())::look).doesNotThrowAnyException();
    }
}
