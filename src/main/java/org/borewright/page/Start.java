package org.borewright.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Comparator;
import java.util.List;
import org.borewright.api.lookup.engine.EngineLookup;
import org.borewright.api.lookup.engine.EnginesAnswer;
import org.borewright.api.order.OrderResource;
import org.borewright.api.order.answer.OrdersAnswer;
import org.jspecify.annotations.Nullable;

/** Where a day at the desk begins: the engines, and the orders there are. */
@Path("/")
@Produces(Page.MEDIA_TYPE)
public class Start {

    private static final int ORDERS_SHOWN = 12;
    private static final int HOLES_OF_EXAMPLE = 4;

    private final EngineLookup engines;
    private final OrderResource orders;

    Start(EngineLookup engines, OrderResource orders) {
        this.engines = engines;
        this.orders = orders;
    }

    /**
     * The page.
     *
     * @param words that were looked for
     * @param found the engines that answer them
     * @param orders the latest of the orders
     * @param example the engine that an example is shown of; absent where none is found
     */
    @CheckedTemplate(basePath = "page")
    record StartPage(
            String words,
            EnginesAnswer found,
            OrdersAnswer orders,
            @Nullable String example) implements TemplateInstance {}

    /** The page, with the engines that answer the words of its search. */
    @GET
    public Response start(@Context UriInfo asked) {
        String words = asked.getQueryParameters().getFirst("words");
        EnginesAnswer found = engines.found(asked);
        return Page.of(new StartPage(
                words == null ? "" : words, found, orders.latest(ORDERS_SHOWN), example(found.engines())));
    }

    /** That of an engine of several holes tells most. */
    private static @Nullable String example(List<EnginesAnswer.Found> engines) {
        return engines.stream()
                .max(Comparator.comparing(engine -> engine.cylinders() == HOLES_OF_EXAMPLE))
                .map(EnginesAnswer.Found::engine)
                .orElse(null);
    }
}
