package org.borewright.api.guard;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;

/** The clock on the wall of the shop: what asks for today or for now asks for it here. It ticks as finely as a table keeps time. */
final class WallClock {

    private static final Duration MICROSECOND = Duration.ofNanos(1_000);

    private WallClock() {}

    @Produces
    @Singleton
    static Clock clock() {
        return Clock.tick(Clock.system(ZoneId.systemDefault()), MICROSECOND);
    }
}
