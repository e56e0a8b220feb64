package org.borewright.order.desk;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.interceptor.Interceptor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.borewright.catalog.store.Shelves;
import org.borewright.order.store.JournalHead;

/**
 * Brings what matches see of the stock up to date: at once after a change here, and within a second after one on another machine that works
 * on the same database. What is put aside never rests on it.
 */
@ApplicationScoped
class StockWatch {

    private static final int AFTER_THE_CATALOGUE = Interceptor.Priority.APPLICATION + 1_000;

    private final Shelves shelves;
    private final ExecutorService workers;
    private final AtomicLong seen = new AtomicLong();
    private final AtomicBoolean called = new AtomicBoolean();

    StockWatch(Shelves shelves, ExecutorService workers) {
        this.shelves = shelves;
        this.workers = workers;
    }

    void onStart(@Observes @Priority(AFTER_THE_CATALOGUE) StartupEvent start) {
        look();
    }

    void onMove(@Observes(during = TransactionPhase.AFTER_SUCCESS) StockMoved moved) {
        if (called.compareAndSet(false, true)) {
            workers.execute(() -> {
                called.set(false);
                look();
            });
        }
    }

    @Scheduled(every = "1s", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void look() {
        long now = QuarkusTransaction.requiringNew().call(() -> JournalHead.now().stockPosition);
        if (seen.getAndSet(now) != now) {
            shelves.restock(now);
        }
    }
}
