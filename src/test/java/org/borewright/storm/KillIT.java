package org.borewright.storm;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** {@link KillTrial} in short. */
class KillIT {

    private static final int CLIENTS = 8;

    @TempDir
    Path home;

    @ParameterizedTest
    @EnumSource
    void whatWasAnsweredSurvivesTheEndOfTheMachine(Shop.Kind database) throws Exception {
        try (Shop shop = Shop.on(database, home)) {
            new Killing(shop, 2, CLIENTS).ofOneMachine(Shop.SHORT_LIVED);
        }
    }
}
