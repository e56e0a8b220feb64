package org.borewright.order.desk;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import org.borewright.order.store.AnsweredRow;
import org.borewright.order.store.OrderRow;

/**
 * Looks now and then for parts that were put aside too long, and for keys that nobody will send again. Several machines may look at once: an
 * order is held while it is asked.
 */
@ApplicationScoped
class RunningOut {

    private final OrderDesk desk;
    private final OrderSettings settings;
    private final Clock clock;

    RunningOut(OrderDesk desk, OrderSettings settings, Clock clock) {
        this.desk = desk;
        this.settings = settings;
        this.clock = clock;
    }

    @Scheduled(every = "${borewright.order.looks-every}", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void look() {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew().call(() -> OrderRow.runOut(now)).forEach(order -> desk.runOut(order, now));
        QuarkusTransaction.requiringNew().run(() -> AnsweredRow.forget(now.minus(settings.keysKeptFor())));
    }
}
