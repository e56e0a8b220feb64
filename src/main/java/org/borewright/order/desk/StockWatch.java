package org.borewright.order.desk;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.interceptor.Interceptor;
import org.borewright.catalog.store.Shelves;
import org.borewright.order.store.JournalHead;

/**
 * Brings what matches see of the stock up to date within a second after a change, here or on another machine that works on the same
 * database. What is put aside never rests on it.
 */
@ApplicationScoped
public class StockWatch {

    private static final int AFTER_THE_CATALOGUE = Interceptor.Priority.APPLICATION + 1_000;

    private final Shelves shelves;
    private volatile long seen;

    StockWatch(Shelves shelves) {
        this.shelves = shelves;
    }

    void onStart(@Observes @Priority(AFTER_THE_CATALOGUE) StartupEvent start) {
        look();
    }

    /**
     * Looks at once; asked where a price is about to be named, and never within a transaction, for it takes a connection of its own. While
     * the machine starts there may be no catalogue yet that stock could be counted for.
     */
    @Scheduled(
            every = "1s",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP,
            skipExecutionIf = Scheduled.ApplicationNotRunning.class)
    public void look() {
        if (!shelves.isFilled()) {
            return;
        }
        QuarkusTransaction.requiringNew().run(() -> {
            if (JournalHead.now().stockPosition != seen) {
                // Held, so that nobody moves stock between the count and its name.
                long counted = JournalHead.held().stockPosition;
                shelves.restock(counted);
                seen = counted;
            }
        });
    }
}
