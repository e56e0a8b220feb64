package org.borewright.storm;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A machine is killed in the middle of its work, again and again. */
class KillTrial {

    private static final int KILLS = Integer.getInteger("borewright.storm.kills", 20);
    private static final int CLIENTS = 16;

    @TempDir
    Path home;

    @ParameterizedTest
    @EnumSource
    void whatWasAnsweredSurvivesTheEndOfTheMachine(Shop.Kind database) throws Exception {
        try (Shop shop = Shop.on(database, home)) {
            System.out.println(database + ": " + new Killing(shop, KILLS, CLIENTS).ofOneMachine());
        }
    }
}
