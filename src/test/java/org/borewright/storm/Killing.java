package org.borewright.storm;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Customers order, and the machine is killed in the middle of it, again and again. After each start every order is asked for that an answer
 * had told of: it must be there whole, with what it holds and its lines in the journal. What was sent and not answered is sent again
 * with its key, and must be done once.
 */
final class Killing {

    private static final int ENOUGH = 5_000;

    private final Shop shop;
    private final int kills;
    private final int clients;
    private final Random dice;
    private final StringBuilder summary = new StringBuilder();
    private long acknowledged;
    private int sentAgain;
    private int doneUnanswered;

    Killing(Shop shop, int kills, int clients) {
        this.shop = shop;
        this.kills = kills;
        this.clients = clients;
        this.dice = new Random(kills);
    }

    /** All of it. @return what happened, for whoever reads it */
    String ofOneMachine(String... options) throws Exception {
        List<Customer> customers = new ArrayList<>();
        for (int i = 0; i < clients; i++) {
            customers.add(new Customer(dice.nextLong()));
        }
        StartedService service = shop.open(1, options).get(0);
        Asked.stockUp(new Desk(service.port()), ENOUGH);
        for (int kill = 1; kill <= kills; kill++) {
            loadAndKill(service, customers);
            service = shop.open(1, options).get(0);
            check(new Desk(service.port()), customers);
        }
        service.close();
        audit(customers);
        summary.append(String.format(
                Locale.ROOT,
                "%d kills under %d clients: %d answered changes, each there; %d sent again, of which %d had been done, none twice%n",
                kills,
                clients,
                acknowledged,
                sentAgain,
                doneUnanswered));
        return summary.toString();
    }

    private void loadAndKill(StartedService service, List<Customer> customers) throws Exception {
        Desk desk = new Desk(service.port());
        AtomicLong answered = new AtomicLong();
        ExecutorService crowd = Executors.newFixedThreadPool(clients);
        List<Future<?>> all = new ArrayList<>();
        customers.forEach(customer -> all.add(crowd.submit(() -> customer.orderUntilKilled(desk, answered))));
        // Not before all are at it, and then at any moment of a second.
        while (answered.get() < 3L * clients) {
            Thread.sleep(10);
            throwWhatIsWrong(all.stream().filter(Future::isDone).toList());
        }
        Thread.sleep(dice.nextInt(1_000));
        service.kill();
        throwWhatIsWrong(all);
        crowd.shutdown();
        acknowledged += answered.get();
    }

    private static void throwWhatIsWrong(List<Future<?>> all) throws InterruptedException {
        for (Future<?> one : all) {
            try {
                one.get();
            } catch (ExecutionException wrong) {
                throw new IllegalStateException(wrong.getCause());
            }
        }
    }

    private void check(Desk desk, List<Customer> customers) throws Exception {
        for (Customer customer : customers) {
            for (Customer.Known known : customer.known()) {
                needWhole(desk, known);
            }
            if (customer.waits()) {
                sentAgain++;
                doneUnanswered += customer.wasDone(desk) ? 1 : 0;
                customer.sendAgain(desk);
            }
            customer.forget();
        }
        assertThat(desk.seen("/api/journal/verification").get("holds").asBoolean())
                .isTrue();
    }

    private static void needWhole(Desk desk, Customer.Known known) throws IOException, InterruptedException {
        JsonNode order = desk.seen("/api/orders/" + known.number());
        JsonNode lines = desk.seen("/api/journal?order=" + known.number()).get("lines");
        assertThat(order.get("version").asInt()).isEqualTo(lines.size()).isIn(known.version(), known.version() + 1);
        assertThat(lines.get(known.version() - 1).get("after").asText())
                .startsWith(known.state() + ", version " + known.version() + ":");
        if (order.get("version").asInt() == known.version()) {
            assertThat(order.get("state").asText()).isEqualTo(known.state());
            assertThat(order.get("held")).isEqualTo(known.held());
        }
    }

    private void audit(List<Customer> customers) throws Exception {
        try (Connection tables = shop.tables()) {
            Books books = new Books(tables);
            assertThat(books.faults()).isEmpty();
            assertThat(books.count("select count(*) from orders"))
                    .isEqualTo(customers.stream().mapToLong(Customer::made).sum());
            summary.append(String.format(
                    Locale.ROOT,
                    "%d orders, %d accepted; %d lines of the journal hold; ",
                    books.count("select count(*) from orders"),
                    books.orders("ACCEPTED").size(),
                    books.count("select count(*) from journal")));
        }
    }
}
