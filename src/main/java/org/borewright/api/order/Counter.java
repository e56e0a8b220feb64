package org.borewright.api.order;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.function.Supplier;
import org.borewright.api.order.answer.JudgementAnswer;
import org.borewright.api.order.answer.OfferDocument;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.order.answer.QuoteAnswer;
import org.borewright.api.order.request.Caller;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.RefusedException;
import org.borewright.order.desk.ExactlyOnce;
import org.borewright.order.desk.OrderBench;
import org.borewright.order.desk.Reply;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.QuoteRow;
import org.borewright.order.store.ReservationRow;

/** Hands errands in and answers out: each once, whatever is refused as a problem. */
@ApplicationScoped
public class Counter {

    private final ExactlyOnce once;
    private final ObjectMapper json;

    Counter(ExactlyOnce once, ObjectMapper json) {
        this.once = once;
        this.json = json;
    }

    /** The answer to a request, of the work or of the time before. @throws ProblemException where it is refused */
    public Response answer(Caller caller, Supplier<Reply> work) {
        try {
            Reply reply = once.reply(caller.key(), caller.fingerprint(), work)
                    .orElseThrow(() -> new ProblemException(Problem.of(
                            ProblemType.KEY_USED,
                            "The key " + caller.key() + " was sent before with another request.")));
            Response.ResponseBuilder response = Response.status(reply.status())
                    .type(MediaType.APPLICATION_JSON)
                    .entity(reply.body());
            reply.version().ifPresent(version -> response.tag(tag(version)));
            reply.location().ifPresent(path -> response.location(URI.create(path)));
            return response.build();
        } catch (RefusedException refused) {
            throw new ProblemException(Refusals.problem(refused.refusal()));
        }
    }

    /** An order after a change. */
    Reply moved(OrderRow order) {
        return new Reply(200, Optional.empty(), Optional.of(order.version), written(whole(order)));
    }

    /** An order after the bench was asked, with what it said. */
    Reply judged(OrderBench.Benched benched) {
        OrderAnswer answer = whole(benched.order()).with(JudgementAnswer.of(benched));
        return new Reply(200, Optional.empty(), Optional.of(answer.version()), written(answer));
    }

    /** An order that was just noted. */
    Reply made(OrderRow order) {
        return new Reply(
                201, Optional.of("/api/orders/" + order.number), Optional.of(order.version), written(whole(order)));
    }

    /** A quote that was just given. */
    Reply made(QuoteRow quote, int version) {
        return new Reply(
                201,
                Optional.of("/api/orders/" + quote.orderNumber + "/quotes/" + quote.number),
                Optional.of(version),
                written(QuoteAnswer.whole(quote)));
    }

    /** Anything else that was just made. */
    public Reply made(String path, Object answer) {
        return new Reply(201, Optional.of(path), Optional.empty(), written(answer));
    }

    /** Anything else that was done. */
    Reply done(Object answer) {
        return new Reply(200, Optional.empty(), Optional.empty(), written(answer));
    }

    /** What a quote offers, read again. */
    OfferDocument offer(QuoteRow quote) {
        return OfferDocument.read(json, quote.document);
    }

    static OrderAnswer whole(OrderRow order) {
        return OrderAnswer.whole(order, ReservationRow.of(order.number));
    }

    static EntityTag tag(int version) {
        return new EntityTag(Integer.toString(version));
    }

    String written(Object answer) {
        try {
            return json.writeValueAsString(answer);
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException(unwritable);
        }
    }
}
