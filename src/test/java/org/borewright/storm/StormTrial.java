package org.borewright.storm;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sixty-four clients say yes five thousand times to what is there for a quarter of them. */
class StormTrial {

    private static final int ORDERS = Integer.getInteger("borewright.storm.orders", 5_000);
    private static final int CLIENTS = 64;
    private static final int DUELS = 50;

    @TempDir
    Path home;

    @ParameterizedTest
    @CsvSource({"POSTGRESQL, 2", "H2, 1"})
    void asMuchIsSoldAsThereIsAndNoMore(Shop.Kind database, int machines) throws Exception {
        try (Shop shop = Shop.on(database, home)) {
            System.out.println(database + ", " + new Storm(shop, ORDERS, CLIENTS, DUELS).over(machines));
        }
    }
}
