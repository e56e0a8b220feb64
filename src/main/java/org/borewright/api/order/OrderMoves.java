package org.borewright.api.order;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.stream.Stream;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.api.order.request.Caller;
import org.borewright.api.order.request.Sent;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.order.Awaited;
import org.borewright.order.Errand;
import org.borewright.order.Move;
import org.borewright.order.OrderHold;
import org.borewright.order.Refusal;
import org.borewright.order.RefusedException;
import org.borewright.order.desk.OrderBench;
import org.borewright.order.desk.Reply;
import org.borewright.order.store.OrderRow;
import org.borewright.order.store.QuoteRow;

/** What can be done with an order. */
@Path("/api/orders/{order}")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class OrderMoves {

    private final DeskWork desk;
    private final Surveying surveying;
    private final Quoting quoting;
    private final Benching benching;
    private final Counter counter;

    OrderMoves(DeskWork desk, Surveying surveying, Quoting quoting, Benching benching, Counter counter) {
        this.desk = desk;
        this.surveying = surveying;
        this.quoting = quoting;
        this.benching = benching;
        this.counter = counter;
    }

    /** Keeps how the holes were found: the body of a match. */
    @POST
    @Path("survey")
    public Response survey(@BeanParam Sent sent, byte[] body) {
        surveying.lookAtTheShelf();
        return moved(Move.SURVEY, sent, body, surveying::survey);
    }

    /** Keeps how holes were found that did not clean up. */
    @POST
    @Path("did-not-clean-up")
    public Response didNotCleanUp(@BeanParam Sent sent, byte[] body) {
        surveying.lookAtTheShelf();
        return moved(Move.DID_NOT_CLEAN_UP, sent, body, surveying::didNotCleanUp);
    }

    /** Names a price for what the last survey says. */
    @POST
    @Path("quotes")
    public Response quote(@BeanParam Sent sent, byte[] body) {
        surveying.lookAtTheShelf();
        return answered(Optional.of(Move.QUOTE), sent, body, errand -> {
            QuoteRow quote = quoting.quote(errand, body);
            return counter.made(quote, OrderRow.<OrderRow>findById(errand.order()).version);
        });
    }

    /** The customer's yes. */
    @POST
    @Path("accept")
    public Response accept(@BeanParam Sent sent, byte[] body) {
        return moved(Move.ACCEPT, sent, body, desk::accept);
    }

    /** The customer's no. */
    @POST
    @Path("decline")
    public Response decline(@BeanParam Sent sent, byte[] body) {
        return moved(Move.DECLINE, sent, body, desk::decline);
    }

    /** Calls it off. */
    @POST
    @Path("withdraw")
    public Response withdraw(@BeanParam Sent sent, byte[] body) {
        return moved(Move.WITHDRAW, sent, body, desk::withdraw);
    }

    /** Confirms the pistons in hand: the body of a question of the bench; for rings only that of a match. */
    @POST
    @Path("confirm")
    public Response confirm(@BeanParam Sent sent, byte[] body) {
        return judged(Move.CONFIRM, sent, body, benching::confirm);
    }

    /**
     * What the bench would do with an order.
     *
     * @param answer of the bench, as it is written
     * @param besides what stands in the way of confirming beside what the bench says of the pistons themselves
     */
    public record Plan(String answer, List<OrderHold> besides) {}

    /** What would be confirmed; nothing is kept. @throws ProblemException where nothing can be, or the body is refused */
    @Transactional
    public Plan plan(String order, byte[] body) {
        return seen(order, Move.CONFIRM, number -> {
            Benching.Planned planned = benching.plan(number, body);
            return new Plan(counter.written(planned.answer()), planned.besides());
        });
    }

    /** How the honed holes would be judged, as it is written; nothing is kept. @throws ProblemException likewise */
    @Transactional
    public String judge(String order, byte[] body) {
        return seen(order, Move.FINISH, number -> counter.written(benching.judge(number, body)));
    }

    private <T> T seen(String called, Move move, LongFunction<T> looking) {
        long order = Numbers.order(called);
        try {
            desk.see(order, move);
            return looking.apply(order);
        } catch (RefusedException refused) {
            throw new ProblemException(Refusals.problem(refused.refusal()));
        }
    }

    /** Why nothing that needs all parts of an order is done with it, as that would be refused; empty where nothing is to come. */
    public static Optional<Problem> stillToCome(OrderAnswer order) {
        List<Awaited> awaited = Stream.ofNullable(order.held())
                .flatMap(List::stream)
                .filter(part -> part.toCome() > 0)
                .map(part -> new Awaited(part.number(), part.toCome(), Optional.ofNullable(part.expectedOn())))
                .toList();
        return awaited.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusals.problem(new Refusal.StillToCome(order.number(), awaited)));
    }

    /** Judges the honed holes: the body of a question of the finish; for rings only that of a match. */
    @POST
    @Path("finish")
    public Response finish(@BeanParam Sent sent, byte[] body) {
        return judged(Move.FINISH, sent, body, benching::finish);
    }

    /** Writes other notes on it. */
    @POST
    @Path("notes")
    public Response write(@BeanParam Sent sent, byte[] body) {
        return answered(Optional.empty(), sent, body, errand -> counter.moved(desk.write(errand, body)));
    }

    /** It leaves. */
    @POST
    @Path("release")
    public Response release(@BeanParam Sent sent, byte[] body) {
        return moved(Move.RELEASE, sent, body, desk::release);
    }

    /** Makes the move that the last part of its path names. @throws ProblemException where it is refused, or there is none such */
    public Response move(String name, Sent sent, byte[] body) {
        return switch (name) {
            case "survey" -> survey(sent, body);
            case "did-not-clean-up" -> didNotCleanUp(sent, body);
            case "quotes" -> quote(sent, body);
            case "accept" -> accept(sent, body);
            case "decline" -> decline(sent, body);
            case "withdraw" -> withdraw(sent, body);
            case "confirm" -> confirm(sent, body);
            case "finish" -> finish(sent, body);
            case "notes" -> write(sent, body);
            case "release" -> release(sent, body);
            default -> throw new ProblemException(Problem.unknownPath("/orders/" + sent.order() + "/" + name));
        };
    }

    private Response judged(Move move, Sent sent, byte[] body, BiFunction<Errand, byte[], OrderBench.Benched> work) {
        return answered(Optional.of(move), sent, body, errand -> counter.judged(work.apply(errand, body)));
    }

    private Response moved(Move move, Sent sent, byte[] body, BiFunction<Errand, byte[], OrderRow> work) {
        return answered(Optional.of(move), sent, body, errand -> counter.moved(work.apply(errand, body)));
    }

    /** What cannot be done with the order as it stands is refused before the body is read: how it is to be read may depend on that. */
    private Response answered(Optional<Move> move, Sent sent, byte[] body, Function<Errand, Reply> work) {
        Caller caller = sent.caller(body);
        Errand errand = caller.with(Numbers.order(sent.order()));
        return counter.answer(caller, () -> {
            desk.see(errand, move);
            return work.apply(errand);
        });
    }
}
