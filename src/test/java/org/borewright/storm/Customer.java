package org.borewright.storm;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import org.borewright.storm.Desk.Answer;
import org.borewright.storm.Desk.Change;

/** Orders one thing after the other, says yes to the quote, and thinks better of it now and then; remembers what was answered. */
final class Customer {

    private static final int WITHDRAWN_OF = 3;

    /**
     * An order as the last answer told it.
     *
     * @param number of the order
     * @param version it was at
     * @param state it stood at
     * @param held what was put aside for it
     */
    record Known(long number, int version, String state, JsonNode held) {

        private static Known of(JsonNode order) {
            return new Known(
                    order.get("number").asLong(),
                    order.get("version").asInt(),
                    order.get("state").asText(),
                    order.get("held"));
        }
    }

    private final Random dice;
    private final Map<Long, Known> known = new LinkedHashMap<>();
    private Known last;
    private Change waitedFor;
    private long made;

    Customer(long seed) {
        this.dice = new Random(seed);
    }

    /** What was answered since the last kill. */
    List<Known> known() {
        return List.copyOf(known.values());
    }

    /** How many orders they know of. */
    long made() {
        return made;
    }

    /** Whether something was sent and not answered. */
    boolean waits() {
        return waitedFor != null;
    }

    /** Orders until nobody answers any more. */
    Void orderUntilKilled(Desk desk, AtomicLong answered) throws InterruptedException {
        try {
            while (true) {
                waitedFor = next();
                take(desk.send(waitedFor));
                answered.incrementAndGet();
            }
        } catch (IOException killed) {
            return null;
        }
    }

    private Change next() {
        if (last == null) {
            return Change.of("/api/orders", 0, Asked.PARTS_ALONE);
        }
        String path = "/api/orders/" + last.number;
        return switch (last.state) {
            case "received" -> Change.of(path + "/survey", last.version, Asked.WORN);
            case "surveyed" -> Change.of(path + "/quotes", last.version, "{}");
            case "quoted" -> Change.of(path + "/accept", last.version, "{\"quote\":1,\"mayWait\":true}");
            case "accepted" -> Change.of(path + "/withdraw", last.version, "{\"reason\":\"sold the boat\"}");
            default -> throw new IllegalStateException(last.state);
        };
    }

    private void take(Answer answer) {
        JsonNode told = answer.need(waitedFor.version() == 0 || waitedFor.path().endsWith("quotes") ? 201 : 200)
                .json();
        // A quote is answered as such: the order itself is one version further, and holds what it held.
        last = told.has("state") ? Known.of(told) : new Known(last.number, last.version + 1, "quoted", last.held);
        known.put(last.number, last);
        made += waitedFor.version() == 0 ? 1 : 0;
        waitedFor = null;
        boolean kept = last.state.equals("accepted") && dice.nextInt(WITHDRAWN_OF) > 0;
        last = kept || last.state.equals("withdrawn") ? null : last;
    }

    /** Whether what was not answered was done all the same. */
    boolean wasDone(Desk desk) throws IOException, InterruptedException {
        return waitedFor.version() > 0
                && desk.seen("/api/orders/" + last.number).get("version").asInt() > waitedFor.version();
    }

    /** Sends what was not answered again, with the same key. */
    void sendAgain(Desk desk) throws IOException, InterruptedException {
        take(desk.send(waitedFor));
    }

    /** The next kill is asked about what comes from now on. */
    void forget() {
        known.clear();
        if (last != null) {
            known.put(last.number, last);
        }
    }
}
