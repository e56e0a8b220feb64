package org.borewright.page.bench;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.borewright.api.lookup.engine.EngineLookup;
import org.borewright.api.lookup.engine.EnginesAnswer;
import org.borewright.api.order.OrderResource;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.order.request.OrderQuery;
import org.borewright.order.State;
import org.borewright.order.store.OrderRow;
import org.borewright.page.Page;

/** Where a day at the bench begins: what waits to be surveyed, confirmed and honed. */
@Path("/bench")
@Produces(Page.MEDIA_TYPE)
public class BenchStart {

    private static final int SHOWN = 50;

    private final EngineLookup engines;
    private final OrderResource orders;

    BenchStart(EngineLookup engines, OrderResource orders) {
        this.engines = engines;
        this.orders = orders;
    }

    /**
     * Orders that wait for the same.
     *
     * @param id of its heading
     * @param title what they wait for
     * @param path where that is done, behind the order
     * @param orders that wait, the oldest first
     */
    public record Queue(String id, String title, String path, List<OrderAnswer> orders) {}

    /**
     * The page.
     *
     * @param words that were looked for
     * @param queues of orders
     * @param found engines that can be surveyed without an order
     */
    @CheckedTemplate(basePath = "page")
    record BenchPage(String words, List<Queue> queues, EnginesAnswer found) implements TemplateInstance {}

    /** The page, with the engines that answer the words of its search. */
    @GET
    public Response start(@Context UriInfo asked) {
        String words = asked.getQueryParameters().getFirst("words");
        return Page.of(new BenchPage(
                words == null ? "" : words,
                List.of(
                        queue("to-survey", "To survey", "survey", "survey", State.RECEIVED),
                        queue("to-confirm", "Pistons to measure and confirm", "confirm", "confirm", State.ACCEPTED),
                        queue("to-hone", "To bore, hone and judge", "finish", "hone", State.CONFIRMED)),
                engines.found(asked)));
    }

    /** An order for parts alone never comes here: its moves lead past the bench. */
    private Queue queue(String id, String title, String move, String path, State state) {
        List<OrderAnswer> waiting = new ArrayList<>();
        List<OrderAnswer> page = page(state, 0);
        while (!page.isEmpty()) {
            page.stream()
                    .filter(order -> order.next().contains(move) && order.kind().equals("rebuild"))
                    .forEach(waiting::add);
            // Those that wait for parts may fill whole pages before the first that waits for the bench.
            page = waiting.size() < SHOWN
                    ? page(state, page.get(page.size() - 1).number())
                    : List.of();
        }
        return new Queue(id, title, path, waiting);
    }

    private List<OrderAnswer> page(State state, long after) {
        Optional<String> any = Optional.empty();
        Optional<LocalDate> anyDay = Optional.empty();
        return orders.orders(new OrderQuery(
                        new OrderRow.Sought(Optional.of(state), any, any, any, anyDay, anyDay, after), SHOWN))
                .orders();
    }
}
