package org.borewright.storm;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/** Many who do the same at once. */
final class Crowd {

    /** What each does, over and over. */
    interface Doing {

        void take(int index) throws Exception;
    }

    private Crowd() {}

    /** So many clients share so many tasks; the first thing that goes wrong is told, once all are done. */
    static void of(int clients, int tasks, Doing doing) throws InterruptedException {
        ExecutorService crowd = Executors.newFixedThreadPool(clients);
        try {
            AtomicInteger next = new AtomicInteger();
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < clients; i++) {
                all.add(crowd.submit(() -> {
                    for (int index = next.getAndIncrement(); index < tasks; index = next.getAndIncrement()) {
                        doing.take(index);
                    }
                    return null;
                }));
            }
            for (Future<?> one : all) {
                one.get();
            }
        } catch (ExecutionException wrong) {
            throw new IllegalStateException(wrong.getCause());
        } finally {
            crowd.shutdownNow();
        }
    }
}
