package org.borewright.storm;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.sql.Connection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.borewright.storm.Desk.Answer;
import org.borewright.storm.Desk.Change;

/**
 * Many customers say yes at once to what is not enough for all. Half want a box, half loose parts of another size, and both the same
 * gaskets; some press the button twice, at two machines, with one key or with two.
 */
final class Storm {

    private static final String BOX = "NH-H131-CB050";

    private static final String PISTON = "NH-H131-075";
    private static final String GASKETS = "HV131-SE";

    /** Every so many orders the same yes is sent twice at once. */
    private static final int TWICE = 8;

    private final Shop shop;
    private final int orders;
    private final int clients;
    private final int duels;
    private final List<Desk> desks = new ArrayList<>();
    private final Set<Long> accepted = ConcurrentHashMap.newKeySet();
    private final Set<Long> refused = ConcurrentHashMap.newKeySet();
    private final Map<String, AtomicInteger> answers = new ConcurrentHashMap<>();
    private final StringBuilder summary = new StringBuilder();

    Storm(Shop shop, int orders, int clients, int duels) {
        this.shop = shop;
        this.orders = orders;
        this.clients = clients;
        this.duels = duels;
    }

    /** All of it. @return what happened, for whoever reads it */
    String over(int machines, String... options) throws Exception {
        List<StartedService> services = shop.open(machines, options);
        try {
            services.forEach(service -> desks.add(new Desk(service.port())));
            stockUp();
            List<Long> quoted = quoted();
            say("%d machine(s), %d clients: %d orders quoted", machines, clients, quoted.size());
            accept(quoted);
            fight(quoted);
        } finally {
            for (StartedService service : services) {
                service.close();
                // A fault is told with what the machine printed of it.
                assertThat(service.output()).doesNotContain(" failed, id ");
            }
        }
        audit();
        return summary.toString();
    }

    private void say(String what, Object... figures) {
        summary.append(String.format(Locale.ROOT, what, figures)).append('\n');
    }

    /** Boxes for an eighth of all, loose parts for little more, and gaskets for fewer than both together. */
    private void stockUp() throws Exception {
        int eighth = orders / 8;
        arrive(BOX, eighth);
        for (String part : List.of(PISTON, "NH-H131-R075", "NH-H131-G")) {
            arrive(part, eighth + eighth / 8);
        }
        arrive("NH-H131-C", 2 * (eighth + eighth / 8));
        arrive(GASKETS, 2 * eighth);
        arrive("HV131-GK", 3 * eighth);
        for (Desk desk : desks) {
            while (desk.seen("/api/parts/" + BOX).at("/offer/onHand").asInt() <= eighth
                    || desk.seen("/api/parts/HV131-GK").at("/offer/onHand").asInt() <= 3 * eighth) {
                Thread.sleep(100);
            }
        }
    }

    private void arrive(String part, int quantity) throws Exception {
        Asked.arrive(desks.get(0), part, quantity);
    }

    private List<Long> quoted() throws Exception {
        List<Long> quoted = Asked.quoted(desks, clients, orders);
        Collections.shuffle(quoted, new Random(orders));
        return quoted;
    }

    private void accept(List<Long> quoted) throws Exception {
        long start = System.nanoTime();
        Crowd.of(clients, quoted.size(), index -> accept(quoted.get(index), index));
        double seconds = (System.nanoTime() - start) / 1e9;
        say(
                "accepted %d, refused %d in %.1f s: %.0f a second; answers %s",
                accepted.size(), refused.size(), seconds, quoted.size() / seconds, new TreeMap<>(answers));
        // Nobody was refused what was there: of each of the two kits something has run out.
        int gaskets = left(GASKETS);
        int boxes = left(BOX);
        int pistons = left(PISTON);
        assertThat(Math.min(boxes, gaskets)).isZero();
        assertThat(Math.min(pistons, gaskets)).isZero();
        say("left: %d boxes, %d loose pistons, %d gasket sets", boxes, pistons, gaskets);
    }

    private void accept(long order, int index) throws Exception {
        Change yes = Asked.yes(order);
        Desk here = desks.get(index % desks.size());
        Desk there = desks.get((index + 1) % desks.size());
        List<Answer> got = new ArrayList<>();
        if (index % TWICE == 0) {
            CompletableFuture<Answer> once = there.sending(yes);
            got.add(here.send(yes));
            got.add(once.join());
            assertThat(got.get(0).status()).as("%s", got).isEqualTo(got.get(1).status());
        } else if (index % TWICE == 1) {
            CompletableFuture<Answer> other = there.sending(Asked.yes(order));
            got.add(here.send(yes));
            got.add(other.join());
            assertThat(got.stream().filter(answer -> answer.status() == 200).count())
                    .as("%s", got)
                    .isLessThanOrEqualTo(1);
        } else {
            got.add(here.send(yes));
        }
        got.forEach(answer -> answers.computeIfAbsent(kind(answer), kind -> new AtomicInteger())
                .incrementAndGet());
        (got.stream().anyMatch(answer -> answer.status() == 200) ? accepted : refused).add(order);
    }

    /** The only refusals there may be: too few, with what is left, or another yes to the same order was first. */
    private static String kind(Answer answer) {
        if (answer.status() == 200) {
            return "200";
        }
        String type = answer.json().path("type").asText();
        assertThat(type).as(answer.body()).isIn("/problems/stock-short", "/problems/order-changed");
        if (type.equals("/problems/stock-short")) {
            assertThat(answer.json().at("/errors/0/limit").asText())
                    .as(answer.body())
                    .matches("[0-9]+ left");
        }
        return answer.status() + " " + type.substring(type.lastIndexOf('/') + 1);
    }

    /** Of two who want the last box at the same moment one gets it, and the other is told that none is left. */
    private void fight(List<Long> quoted) throws Exception {
        arrive(GASKETS, orders);
        arrive("HV131-GK", orders);
        List<Long> wantABox = new ArrayList<>(thoseRefusedABox(quoted));
        while (left(BOX) > 0) {
            long order = wantABox.remove(0);
            desks.get(0).send(Asked.yes(order)).need(200);
            refused.remove(order);
            accepted.add(order);
        }
        for (int duel = 0; duel < duels; duel++) {
            arrive(BOX, 1);
            fight(wantABox.get(2 * duel), wantABox.get(2 * duel + 1));
        }
        say("%d duels for the last box: one won each, the other was told \"0 left\"", duels);
    }

    private void fight(long one, long other) {
        List<Long> two = List.of(one, other);
        List<CompletableFuture<Answer>> sent = List.of(
                desks.get(0).sending(Asked.yes(two.get(0))),
                desks.get(desks.size() - 1).sending(Asked.yes(two.get(1))));
        List<Answer> got = sent.stream().map(CompletableFuture::join).toList();
        assertThat(got).extracting(Answer::status).containsExactlyInAnyOrder(200, 409);
        int winner = got.get(0).status() == 200 ? 0 : 1;
        assertThat(got.get(1 - winner).json().at("/errors/0/limit").asText()).isEqualTo("0 left");
        refused.remove(two.get(winner));
        accepted.add(two.get(winner));
    }

    /** Enough of them, by their quotes. */
    private List<Long> thoseRefusedABox(List<Long> quoted) throws Exception {
        List<Long> found = new ArrayList<>();
        int enough = 2 * duels + left(BOX);
        for (Long order : quoted) {
            if (refused.contains(order) && found.size() < enough) {
                JsonNode quote = desks.get(0).seen("/api/orders/" + order + "/quotes/1");
                if (quote.get("offer").toString().contains(BOX)) {
                    found.add(order);
                }
            }
        }
        return found;
    }

    private int left(String part) throws Exception {
        return desks.get(0).seen("/api/stock/" + part).get("left").asInt();
    }

    private void audit() throws Exception {
        try (Connection tables = shop.tables()) {
            Books books = new Books(tables);
            assertThat(books.faults()).isEmpty();
            assertThat(books.orders("ACCEPTED")).isEqualTo(accepted);
            assertThat(books.orders("QUOTED")).isEqualTo(refused);
            assertThat(books.count("select count(*) from journal where did = 'accept'"))
                    .isEqualTo(accepted.size());
            say(
                    "what is put aside is what orders hold, nothing negative, lost or double; %d lines of the journal hold",
                    books.count("select count(*) from journal"));
        }
    }
}
