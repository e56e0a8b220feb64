package org.borewright.api.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.order.JournalResource;
import org.borewright.api.order.OrderMoves;
import org.borewright.api.order.OrderResource;
import org.borewright.api.order.request.Caller;
import org.borewright.api.order.request.Sent;
import org.borewright.api.problem.ProblemException;
import org.jboss.logging.Logger;

/**
 * Plays the file of demo orders, a line for each move, where there is one and nothing ever happened in the shop. Each line is asked of the
 * API as anybody would ask it, under a key of its own that is always the same: of several machines that start at once none does it twice.
 */
@ApplicationScoped
class DemoOrders {

    private static final Logger LOG = Logger.getLogger(DemoOrders.class);

    /** When the catalogue is there. */
    private static final int AFTER_ALL_ELSE = 5_000;

    private final Path file;
    private final OrderResource orders;
    private final JournalResource journal;
    private final Map<String, Played> last = new HashMap<>();
    private final OrderMoves moves;
    private final ObjectMapper json;

    DemoOrders(
            DemoSettings settings, OrderResource orders, JournalResource journal, OrderMoves moves, ObjectMapper json) {
        this.file = settings.orders();
        this.orders = orders;
        this.journal = journal;
        this.moves = moves;
        this.json = json;
    }

    void onStart(@Observes @Priority(AFTER_ALL_ELSE) StartupEvent start) throws IOException {
        if (!Files.isRegularFile(file)
                || !journal.lines(0, Optional.empty(), 1).lines().isEmpty()) {
            return;
        }
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            play(json.readTree(line));
        }
        LOG.infof("%d demo orders, from %s", last.size(), file);
    }

    private void play(JsonNode line) throws IOException {
        String order = line.path("order").asText();
        String move = line.path("move").asText();
        String key = "demo-" + order + "-" + move;
        byte[] body = line.path("body").toString().getBytes(StandardCharsets.UTF_8);
        try {
            Played before = last.get(order);
            last.put(order, before == null ? received(line, key, body) : before.moved(moves, line, key, body));
        } catch (ProblemException refused) {
            // The shop opens all the same; the line is to be looked at.
            LOG.warnf("Demo order %s, %s: %s", order, move, refused.problem().detail());
        }
    }

    private Played received(JsonNode line, String key, byte[] body) throws IOException {
        Caller caller = Caller.sending(line.path("by").asText(), key, Optional.empty(), line.toString());
        Response made = orders.receive(caller, body);
        return new Played(
                json.readTree(made.getEntity().toString()).path("number").asText(), version(made));
    }

    private static String version(Response done) {
        return "\"" + done.getEntityTag().getValue() + "\"";
    }

    /**
     * An order that was just made or moved.
     *
     * @param number its number
     * @param version it is at, as a tag
     */
    private record Played(String number, String version) {

        Played moved(OrderMoves moves, JsonNode line, String key, byte[] body) {
            Sent sent = new Sent() {
                @Override
                public String order() {
                    return number;
                }

                @Override
                public Caller caller(byte[] of) {
                    return Caller.sending(line.path("by").asText(), key, Optional.of(version), line.toString());
                }
            };
            return new Played(
                    number, DemoOrders.version(moves.move(line.path("move").asText(), sent, body)));
        }
    }
}
