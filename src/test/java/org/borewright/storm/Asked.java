package org.borewright.storm;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.borewright.storm.Desk.Change;

/** What customers ask for: a single of the demo catalogue. */
final class Asked {

    static final String PARTS_ALONE = """
            {"kind":"parts alone","customer":"Tessaly Rowing Club","engine":"HALVERN-131"}""";

    /** Goes to +0.50, of which a box holds everything but the gaskets. */
    static final String WORN = worn("53.720");

    /** Goes to +0.75, of which there are loose parts only. */
    static final String WORN_MORE = worn("53.900");

    private static final int QUOTED = 3;

    private Asked() {}

    /** Yes to the first quote of an order that nothing else happened to, with a key of its own. */
    static Change yes(long order) {
        return Change.of("/api/orders/" + order + "/accept", QUOTED, "{\"quote\":1}");
    }

    /** Lays so many on the shelf. */
    static void arrive(Desk desk, String part, int quantity) throws IOException, InterruptedException {
        desk.send(Change.of("/api/stock/" + part + "/arrivals", 0, "{\"quantity\":" + quantity + "}"))
                .need(200);
    }

    /** Lays on the shelf what so many need, whichever of both they want. */
    static void stockUp(Desk desk, int orders) throws IOException, InterruptedException {
        for (String part :
                List.of("NH-H131-CB050", "NH-H131-075", "NH-H131-R075", "NH-H131-G", "HV131-SE", "HV131-GK")) {
            arrive(desk, part, orders);
        }
        arrive(desk, "NH-H131-C", 2 * orders);
    }

    /** Orders with a quote each, by turns for the one and the other. @return their numbers, sorted */
    static List<Long> quoted(List<Desk> desks, int clients, int orders) throws InterruptedException {
        List<Long> quoted = Collections.synchronizedList(new ArrayList<>());
        Crowd.of(clients, orders, index -> quoted.add(quoted(desks.get(index % desks.size()), index)));
        List<Long> sorted = new ArrayList<>(quoted);
        Collections.sort(sorted);
        return sorted;
    }

    private static long quoted(Desk desk, int index) throws IOException, InterruptedException {
        long order = desk.send(Change.of("/api/orders", 0, PARTS_ALONE))
                .need(201)
                .json()
                .get("number")
                .asLong();
        String path = "/api/orders/" + order;
        desk.send(Change.of(path + "/survey", 1, index % 2 == 0 ? WORN : WORN_MORE))
                .need(200);
        desk.send(Change.of(path + "/quotes", 2, "{}")).need(201);
        return order;
    }

    private static String worn(String diameter) {
        return """
            {"engine":"HALVERN-131","unit":"mm","condition":"worn","temperature":20,"gauge":{"name":"BG-1"},
             "deckFlatness":0.01,"skimmedBefore":0,
             "presentSize":{"size":"standard","knownFrom":"record"},"cylinders":[{"cylinder":"1","diameter":%s}]}""".formatted(diameter);
    }
}
