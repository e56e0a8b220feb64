package org.borewright.order.desk;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import org.borewright.order.store.AnsweredRow;
import org.borewright.order.store.OrderRow;
import org.jboss.logging.Logger;

/**
 * Looks now and then for parts that were put aside too long, and for keys that nobody will send again. Several machines may look at once: an
 * order is held while it is asked. One that cannot be put back keeps no other from it, and is tried again at the next look.
 */
@ApplicationScoped
class RunningOut {

    private static final Logger LOG = Logger.getLogger(RunningOut.class);

    private final OrderDesk desk;
    private final OrderSettings settings;
    private final Clock clock;

    RunningOut(OrderDesk desk, OrderSettings settings, Clock clock) {
        this.desk = desk;
        this.settings = settings;
        this.clock = clock;
    }

    @Scheduled(
            every = "${borewright.order.looks-every}",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP,
            skipExecutionIf = Scheduled.ApplicationNotRunning.class)
    void look() {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew().call(() -> OrderRow.runOut(now)).forEach(order -> runOut(order, now));
    }

    void runOut(long order, Instant now) {
        try {
            desk.runOut(order, now);
        } catch (RuntimeException failed) {
            if (ExactlyOnce.othersWereInTheWay(failed)) {
                LOG.infof(
                        "Others have order %d in hand: whether what is put aside for it ran out is asked again", order);
                return;
            }
            LOG.errorf(failed, "What is put aside for order %d ran out, and could not be put back", order);
        }
    }

    @Scheduled(
            every = "1h",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP,
            skipExecutionIf = Scheduled.ApplicationNotRunning.class)
    void forget() {
        Instant before = clock.instant().minus(settings.keysKeptFor());
        QuarkusTransaction.requiringNew().run(() -> AnsweredRow.forget(before));
    }
}
