package org.borewright.api.guard;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.ZoneId;

/** The clock on the wall of the shop: what asks for today asks for it here. */
final class WallClock {

    private WallClock() {}

    @Produces
    @Singleton
    static Clock clock() {
        return Clock.system(ZoneId.systemDefault());
    }
}
