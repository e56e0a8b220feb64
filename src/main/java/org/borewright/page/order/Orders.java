package org.borewright.page.order;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.borewright.api.lookup.engine.EngineLookup;
import org.borewright.api.order.JournalResource;
import org.borewright.api.order.OrderMoves;
import org.borewright.api.order.OrderResource;
import org.borewright.api.order.answer.JournalAnswer;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.order.answer.OrdersAnswer;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.api.order.answer.QuoteAnswer;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.measure.LengthUnit;
import org.borewright.page.Entry;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.SentForm;
import org.borewright.page.Told;
import org.jspecify.annotations.Nullable;

/** The list of orders, and each with its moves as forms. */
@Path("/orders")
@Produces(Page.MEDIA_TYPE)
public class Orders {

    private static final int LINES_SHOWN = 200;

    private final OrderResource orders;
    private final JournalResource journal;
    private final OrderMoves moves;
    private final EngineLookup engines;

    Orders(OrderResource orders, JournalResource journal, OrderMoves moves, EngineLookup engines) {
        this.engines = engines;
        this.orders = orders;
        this.journal = journal;
        this.moves = moves;
    }

    /**
     * The list.
     *
     * @param entry what is looked for
     * @param found a page of those that answer it
     * @param states all there are, to choose among
     * @param further the query of the page that follows; absent on the last
     */
    @CheckedTemplate(basePath = "page")
    record OrdersPage(
            Entry entry,
            OrdersAnswer found,
            Map<String, String> states,
            @Nullable String further) implements TemplateInstance {}

    /**
     * One order.
     *
     * @param order how it stands
     * @param entry what was typed to move it, and the version that its forms are for
     * @param quotes given so far, the first first
     * @param conditions of each by its number: what must turn out right for its price to hold
     * @param papers kept with it
     * @param journal what happened to it
     * @param offering what may be asked of a quote
     */
    @CheckedTemplate(basePath = "page")
    record OrderPage(
            OrderAnswer order,
            Entry entry,
            List<QuoteAnswer> quotes,
            Map<Integer, List<Object>> conditions,
            List<PaperAnswer> papers,
            JournalAnswer journal,
            Offering offering)
            implements TemplateInstance {}

    /** The orders that answer the parameters, which are those of the API. */
    @GET
    public Response orders(@Context UriInfo asked) {
        OrdersAnswer found = orders.orders(asked);
        Listing listing = Listing.of(asked, found);
        return Page.of(new OrdersPage(Entry.of(listing.form()), found, Listing.states(), listing.further()));
    }

    /** The page of the order whose number was typed. */
    @GET
    @Path("/number")
    public Response byNumber(@QueryParam("number") @DefaultValue("") String number) {
        return Page.seeOther("/orders/" + URLEncoder.encode(number.strip(), StandardCharsets.UTF_8));
    }

    /** How an order stands. */
    @GET
    @Path("/{order}")
    public Response order(@PathParam("order") String order) {
        return shown(order, Form.empty(), Optional.empty());
    }

    /** A quote on paper. */
    @GET
    @Path("/{order}/quotes/{quote}/paper")
    @Produces("application/pdf")
    public Response paper(@PathParam("order") String order, @PathParam("quote") String quote) {
        return orders.onPaper(order, quote);
    }

    /** Does with an order what a form asks for. */
    @POST
    @Path("/{order}/{move}")
    @Consumes(Form.MEDIA_TYPE)
    public Response move(@PathParam("order") String order, @PathParam("move") String move, String sent) {
        Form form = Form.read(sent);
        try {
            moves.move(move, new SentForm(order, move, form), form.body());
            return Page.seeOther("/orders/" + order);
        } catch (ProblemException refused) {
            return shown(order, form, Optional.of(refused.problem()));
        }
    }

    /** The page of an order, with what was refused of it. */
    public Response shown(String order, Form form, Optional<Problem> refused) {
        OrderAnswer found = orders.order(order);
        Form known = form.typed("version").isBlank() ? form.with("version", Integer.toString(found.version())) : form;
        Entry entry = refused.map(why -> Entry.of(known, why, found.version())).orElseGet(() -> Entry.of(known));
        List<QuoteAnswer> quotes = orders.wholeQuotes(order);
        return Page.of(
                entry.status(),
                new OrderPage(
                        found,
                        entry,
                        quotes,
                        quotes.stream().collect(Collectors.toMap(QuoteAnswer::quote, Orders::conditions)),
                        orders.papers(order),
                        journal.lines(0, Optional.of(found.number()), LINES_SHOWN),
                        Offering.of(engines.known(found.engine(), LengthUnit.MILLIMETRE))));
    }

    private static List<Object> conditions(QuoteAnswer quote) {
        String offer = Objects.requireNonNull(quote.offer(), "a whole quote has its offer");
        return Told.of(offer.getBytes(StandardCharsets.UTF_8)).get("conditions") instanceof List<?> told
                ? List.copyOf(told)
                : List.of();
    }
}
