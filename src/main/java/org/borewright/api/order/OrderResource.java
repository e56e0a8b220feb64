package org.borewright.api.order;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import org.borewright.api.guard.Parameters;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.order.answer.OrdersAnswer;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.api.order.answer.QuoteAnswer;
import org.borewright.api.order.print.QuotePrint;
import org.borewright.api.order.request.Caller;
import org.borewright.api.order.request.OrderQuery;
import org.borewright.api.order.request.OrderReader;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.Refusal;
import org.borewright.order.desk.OrderDesk;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.PaperRow;
import org.borewright.order.store.QuoteRow;

/** Orders, their quotes and their papers. */
@Path("/api/orders")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class OrderResource {

    private static final String PDF_NAME = "application/pdf";
    private static final MediaType PDF = MediaType.valueOf(PDF_NAME);

    private final OrderReader reader;
    private final OrderDesk desk;
    private final Counter counter;
    private final QuotePrint print;

    OrderResource(OrderReader reader, OrderDesk desk, Counter counter, QuotePrint print) {
        this.reader = reader;
        this.desk = desk;
        this.counter = counter;
        this.print = print;
    }

    /** Notes a new order. */
    @POST
    public Response receive(@Context UriInfo called, @Context HttpHeaders headers, byte[] body) {
        return receive(Caller.making(called, headers, body), body);
    }

    /** The same, for whoever is known already. */
    public Response receive(Caller caller, byte[] body) {
        return counter.answer(caller, () -> counter.made(desk.receive(reader.opening(body, caller.by()))));
    }

    /** The orders that answer a query, by number, page by page. */
    @GET
    @Transactional
    public OrdersAnswer orders(@Context UriInfo called) {
        return orders(OrderQuery.read(new Parameters(called)));
    }

    /** The same, of a query that was read. */
    @Transactional
    public OrdersAnswer orders(OrderQuery query) {
        return OrdersAnswer.of(OrderRow.sought(query.sought(), query.limit() + 1), query.limit());
    }

    /** So many orders at the most, the latest first. */
    @Transactional
    public OrdersAnswer latest(int most) {
        return OrdersAnswer.of(OrderRow.latest(most), most);
    }

    /** One order, with its version as ETag. */
    @GET
    @Path("/{order}")
    @Transactional
    public Response order(@PathParam("order") String order, @Context UriInfo called, @Context Request request) {
        Parameters.none(called);
        OrderAnswer answer = Counter.whole(known(order));
        Response.ResponseBuilder same = request.evaluatePreconditions(Counter.tag(answer.version()));
        return (same == null ? Response.ok(answer) : same)
                .tag(Counter.tag(answer.version()))
                .build();
    }

    /** The same, whatever the caller has already. */
    @Transactional
    public OrderAnswer order(String order) {
        return Counter.whole(known(order));
    }

    /** The quotes of an order, in short. */
    @GET
    @Path("/{order}/quotes")
    @Transactional
    public List<QuoteAnswer> quotes(@PathParam("order") String order, @Context UriInfo called) {
        Parameters.none(called);
        return QuoteRow.of(known(order).number).stream().map(QuoteAnswer::brief).toList();
    }

    /** All of each of them. */
    @Transactional
    public List<QuoteAnswer> wholeQuotes(String order) {
        return QuoteRow.of(known(order).number).stream().map(QuoteAnswer::whole).toList();
    }

    /** One quote as it was given, or the same on paper. */
    @GET
    @Path("/{order}/quotes/{quote}")
    @Produces({MediaType.APPLICATION_JSON, PDF_NAME})
    public Response quote(
            @PathParam("order") String order,
            @PathParam("quote") String quote,
            @Context UriInfo called,
            @Context HttpHeaders headers) {
        Parameters.none(called);
        Given given = given(order, quote);
        Response.ResponseBuilder answer = onPaper(headers)
                ? onPaper(given)
                : Response.ok(QuoteAnswer.whole(given.quote()), MediaType.APPLICATION_JSON);
        return answer.header(HttpHeaders.VARY, HttpHeaders.ACCEPT).build();
    }

    /** One quote as it was given, whole. */
    public QuoteAnswer quote(String order, String quote) {
        return QuoteAnswer.whole(given(order, quote).quote());
    }

    /** One quote on paper. */
    public Response onPaper(String order, String quote) {
        return onPaper(given(order, quote)).build();
    }

    private Response.ResponseBuilder onPaper(Given given) {
        String name = String.format(
                Locale.ROOT, "inline; filename=\"quote-%d-%d.pdf\"", given.order().number, given.quote().number);
        return Response.ok(print.pdf(given.order(), given.quote()), PDF).header(HttpHeaders.CONTENT_DISPOSITION, name);
    }

    private static Given given(String order, String quote) {
        return QuarkusTransaction.requiringNew().call(() -> {
            OrderRow of = known(order);
            return new Given(of, quote(of, quote));
        });
    }

    /** A quote and its order. */
    private record Given(OrderRow order, QuoteRow quote) {}

    /** Whether paper is what the caller likes best; whoever does not say gets JSON. */
    private static boolean onPaper(HttpHeaders headers) {
        return headers.getAcceptableMediaTypes().stream()
                .filter(type -> type.isCompatible(MediaType.APPLICATION_JSON_TYPE) || type.isCompatible(PDF))
                .findFirst()
                .filter(type -> !type.isCompatible(MediaType.APPLICATION_JSON_TYPE))
                .isPresent();
    }

    /** The papers of an order, in short. */
    @GET
    @Path("/{order}/papers")
    @Transactional
    public List<PaperAnswer> papers(@PathParam("order") String order, @Context UriInfo called) {
        Parameters.none(called);
        return papers(order);
    }

    /** The same, whatever was asked besides. */
    @Transactional
    public List<PaperAnswer> papers(String order) {
        return PaperRow.of(known(order).number).stream().map(PaperAnswer::brief).toList();
    }

    /** One paper: what was asked, and the whole answer. */
    @GET
    @Path("/{order}/papers/{paper}")
    @Transactional
    public PaperAnswer paper(
            @PathParam("order") String order, @PathParam("paper") String paper, @Context UriInfo called) {
        Parameters.none(called);
        OrderRow of = known(order);
        long id = Numbers.paper(paper);
        return PaperRow.<PaperRow>findByIdOptional(id)
                .filter(found -> found.orderNumber == of.number)
                .map(PaperAnswer::whole)
                .orElseThrow(() -> new ProblemException(Problem.of(
                        ProblemType.UNKNOWN_PAPER,
                        String.format(Locale.ROOT, "Order %d has no paper %d.", of.number, id))));
    }

    private static OrderRow known(String text) {
        long number = Numbers.order(text);
        return OrderRow.<OrderRow>findByIdOptional(number).orElseThrow(() -> refused(new Refusal.UnknownOrder(number)));
    }

    private static QuoteRow quote(OrderRow order, String text) {
        long number = Numbers.quote(text);
        return QuoteRow.of(order.number, Math.toIntExact(Math.min(number, Integer.MAX_VALUE)))
                .orElseThrow(() -> refused(new Refusal.UnknownQuote(
                        order.number,
                        Math.toIntExact(Math.min(number, Integer.MAX_VALUE)),
                        QuoteRow.of(order.number).size())));
    }

    private static ProblemException refused(Refusal refusal) {
        return new ProblemException(Refusals.problem(refusal));
    }
}
