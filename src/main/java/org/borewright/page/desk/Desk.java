package org.borewright.page.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.Optional;
import org.borewright.api.lookup.engine.EngineLookup;
import org.borewright.api.match.MatchResource;
import org.borewright.api.problem.ProblemException;
import org.borewright.order.desk.OrderSettings;
import org.borewright.page.Entry;
import org.borewright.page.Form;
import org.borewright.page.Page;
import org.borewright.page.Told;
import org.jspecify.annotations.Nullable;

/** What an engine will take, what that costs, and when it can go out; and the order that comes of it. */
@Path("/desk/{engine}")
@Produces(Page.MEDIA_TYPE)
public class Desk {

    private final EngineLookup engines;
    private final MatchResource matches;
    private final Opening opening;
    private final OrderSettings shop;

    Desk(EngineLookup engines, MatchResource matches, Opening opening, OrderSettings shop) {
        this.engines = engines;
        this.matches = matches;
        this.opening = opening;
        this.shop = shop;
    }

    /**
     * The page.
     *
     * @param question what is asked
     * @param answer what came of it; absent where nothing was asked yet, or it was refused
     * @param picture of its sizes; absent where there is nothing to draw
     * @param order what is typed to make an order of it
     * @param taxed whether a quote adds tax to the prices of the answer, which know of none
     */
    @CheckedTemplate(basePath = "page")
    record DeskPage(
            Question question,
            @Nullable Map<String, Object> answer,
            @Nullable SizePicture picture,
            Entry order,
            boolean taxed)
            implements TemplateInstance {}

    /** An empty form. */
    @GET
    public Response begin(@PathParam("engine") String code, @QueryParam("known") @Nullable String known) {
        return shown(Question.begun(engines.known(code), Known.of(known)), null, Entry.of(Form.empty()));
    }

    /** A form filled in, with its answer. */
    @GET
    @Path("example")
    public Response example(@PathParam("engine") String code) {
        return asked(Question.example(engines.known(code)), Entry.of(Form.empty()));
    }

    /** The form with more or less known, as it was filled in so far. */
    @POST
    @Path("known/{known}")
    @Consumes(Form.MEDIA_TYPE)
    public Response of(@PathParam("engine") String code, @PathParam("known") String known, String sent) {
        return shown(question(code, Form.read(sent)).of(Known.of(known)), null, Entry.of(Form.empty()));
    }

    /** The answer to a form, below the form. */
    @POST
    @Consumes(Form.MEDIA_TYPE)
    public Response ask(@PathParam("engine") String code, String sent) {
        return asked(question(code, Form.read(sent)), Entry.of(Form.empty()));
    }

    /** Makes an order of a form that was answered, with the form as its survey and a quote of what came of it. */
    @POST
    @Path("order")
    @Consumes(Form.MEDIA_TYPE)
    public Response order(@PathParam("engine") String code, String sent) {
        Form form = Form.read(sent);
        try {
            return opening.order(form, question(code, form.only(name -> !Opening.isOfTheOrder(name))));
        } catch (ProblemException refused) {
            return asked(
                    question(code, form.only(name -> !Opening.isOfTheOrder(name))),
                    Entry.of(form.only(Opening::isOfTheOrder), refused.problem()));
        }
    }

    private Question question(String code, Form form) {
        return new Question(engines.known(code), Known.of(form.typed("known")), Entry.of(form));
    }

    private Response asked(Question question, Entry order) {
        try {
            return shown(question, Told.of(answer(question)), order);
        } catch (ProblemException refused) {
            Entry entry = Entry.of(question.asked(), refused.problem());
            return shown(new Question(question.engine(), question.known(), entry), null, order);
        }
    }

    private byte[] answer(Question question) {
        try {
            byte[] body = question.asked().body();
            return question.known().isOfHoles() ? matches.match(body) : matches.estimate(body);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException(unwritable);
        }
    }

    private Response shown(Question question, @Nullable Map<String, Object> answer, Entry order) {
        SizePicture picture =
                Optional.ofNullable(answer).flatMap(SizePicture::of).orElse(null);
        int status = Math.max(question.entry().status(), order.status());
        boolean taxed = shop.taxPercent().signum() > 0;
        return Page.of(status, new DeskPage(question, answer, picture, order, taxed));
    }
}
