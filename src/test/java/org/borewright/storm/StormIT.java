package org.borewright.storm;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@link StormTrial} in short. */
class StormIT {

    private static final int ORDERS = 160;
    private static final int CLIENTS = 32;
    private static final int DUELS = 5;

    @TempDir
    Path home;

    @ParameterizedTest
    @CsvSource({"POSTGRESQL, 2", "H2, 1"})
    void asMuchIsSoldAsThereIsAndNoMore(Shop.Kind database, int machines) throws Exception {
        try (Shop shop = Shop.on(database, home)) {
            new Storm(shop, ORDERS, CLIENTS, DUELS).over(machines, Shop.SHORT_LIVED);
        }
    }
}
