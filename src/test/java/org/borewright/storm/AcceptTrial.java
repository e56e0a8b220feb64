package org.borewright.storm;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How many customers can say yes in a second over HTTP, beside the bare statements of it on the same database from as many clients. */
class AcceptTrial {

    private static final int MEASURED = Integer.getInteger("borewright.storm.accepts", 2_000);
    private static final int WARM_UP = MEASURED / 4;
    private static final int CLIENTS = 16;

    @TempDir
    Path home;

    @ParameterizedTest
    @EnumSource
    void acceptBesideABareTransaction(Shop.Kind database) throws Exception {
        try (Shop shop = Shop.on(database, home)) {
            List<Long> orders = new ArrayList<>();
            double overHttp;
            try (StartedService service = shop.open(1).get(0)) {
                Desk desk = new Desk(service.port());
                Asked.stockUp(desk, 2 * (MEASURED + WARM_UP));
                orders.addAll(Asked.quoted(List.of(desk), CLIENTS, 2 * (MEASURED + WARM_UP)));
                Crowd.Doing yes =
                        index -> desk.send(Asked.yes(orders.get(index))).need(200);
                Crowd.of(CLIENTS, WARM_UP, yes);
                overHttp = perSecond(index -> yes.take(WARM_UP + index));
            }
            audit(shop, orders.subList(0, MEASURED + WARM_UP));
            double bare = bare(shop, orders.subList(MEASURED + WARM_UP, orders.size()));
            System.out.printf(
                    Locale.ROOT,
                    "%s, %d clients: accept over HTTP %,.0f a second, bare transaction %,.0f a second: %.0f %%%n",
                    database,
                    CLIENTS,
                    overHttp,
                    bare,
                    100 * overHttp / bare);
        }
    }

    /** Fast counts for nothing where anything is lost: each yes stands, and what is put aside is what the orders hold. */
    private static void audit(Shop shop, List<Long> accepted) throws Exception {
        try (Connection tables = shop.tables()) {
            Books books = new Books(tables);
            assertThat(books.faults()).isEmpty();
            assertThat(books.orders("ACCEPTED")).containsExactlyInAnyOrderElementsOf(accepted);
        }
    }

    private static double bare(Shop shop, List<Long> orders) throws Exception {
        BlockingQueue<BareAccept> free = new LinkedBlockingQueue<>();
        for (int i = 0; i < CLIENTS; i++) {
            free.add(new BareAccept(shop.tables()));
        }
        Crowd.Doing yes = index -> {
            BareAccept one = free.take();
            one.of(orders.get(index));
            free.add(one);
        };
        Crowd.of(CLIENTS, WARM_UP, yes);
        double bare = perSecond(index -> yes.take(WARM_UP + index));
        for (BareAccept one : free) {
            one.close();
        }
        return bare;
    }

    private static double perSecond(Crowd.Doing doing) throws InterruptedException {
        long start = System.nanoTime();
        Crowd.of(CLIENTS, MEASURED, doing);
        return MEASURED / ((System.nanoTime() - start) / 1e9);
    }
}
