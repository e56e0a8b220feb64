package org.borewright.page.card;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.borewright.api.guard.Parameters;
import org.borewright.api.order.print.Sheets;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.page.Page;
import org.borewright.page.PageSettings;

/** The bench card of an order: to look at, and as a file to print on A4 or Letter. */
@Path("/orders/{order}")
public class BenchCard {

    private static final String PDF = "application/pdf";
    private static final String USUAL_PAPER = "A4";
    private static final List<String> PAPERS = List.of(USUAL_PAPER, "letter");

    /** Longer than any name of a host. */
    private static final int LONGEST_ADDRESS = 300;

    private final Cards cards;
    private final PageSettings settings;

    BenchCard(Cards cards, PageSettings settings) {
        this.cards = cards;
        this.settings = settings;
    }

    /**
     * The page.
     *
     * @param card what stands on it
     */
    @CheckedTemplate(basePath = "page")
    record CardPage(Card card) implements TemplateInstance {}

    /**
     * The file, before it is one.
     *
     * @param card what stands on it
     * @param paper that it is laid out for
     */
    @CheckedTemplate(basePath = "page")
    record CardPaper(Card card, String paper) implements TemplateInstance {}

    /** The card to look at. */
    @GET
    @Path("card")
    @Produces(Page.MEDIA_TYPE)
    public Response page(@PathParam("order") String order, @Context UriInfo called) {
        Parameters.none(called);
        return Page.of(new CardPage(card(order, called)));
    }

    /** The card on paper: {@code paper} is A4, or letter. */
    @GET
    @Path("card.pdf")
    @Produces(PDF)
    public Response paper(@PathParam("order") String order, @Context UriInfo called) {
        String paper = paper(called);
        Card card = card(order, called);
        long number = card.order().number();
        byte[] file = Sheets.of(new CardPaper(card, paper).render()).pdf(card.asOf(), number);
        return Response.ok(file, PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        String.format(Locale.ROOT, "inline; filename=\"card-%d.pdf\"", number))
                .build();
    }

    private static String paper(UriInfo called) {
        Parameters parameters = new Parameters(called);
        Optional<String> asked = parameters.text("paper");
        if (asked.isPresent() && !PAPERS.contains(asked.get())) {
            parameters.fault("paper", "The card is not laid out for such a paper.", String.join(" or ", PAPERS));
        }
        parameters.end();
        return asked.orElse(USUAL_PAPER);
    }

    private Card card(String order, UriInfo called) {
        return cards.of(order, site(settings.address(), called.getBaseUri()));
    }

    /** The address that others reach the pages under, without a stroke at its end. */
    static String site(Optional<String> set, URI asked) {
        String site = set.orElseGet(asked::toString).replaceAll("/+$", "");
        if (site.length() > LONGEST_ADDRESS) {
            throw new ProblemException(Problem.of(
                    ProblemType.BAD_REQUEST, "The address that this was asked of is longer than a code can say."));
        }
        return site;
    }
}
