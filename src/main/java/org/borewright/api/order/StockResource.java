package org.borewright.api.order;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.borewright.api.order.answer.ArrivalAnswer;
import org.borewright.api.order.request.Caller;
import org.borewright.api.order.request.OrderReader;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.desk.StockRoom;

/** What arrives on the shelf. */
@Path("/api/stock/{number}/arrivals")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class StockResource {

    private final OrderReader reader;
    private final StockRoom room;
    private final Counter counter;

    StockResource(OrderReader reader, StockRoom room, Counter counter) {
        this.reader = reader;
        this.room = room;
        this.counter = counter;
    }

    /** Lays so many on the shelf; what orders wait for is put aside at once, the oldest first. */
    @POST
    public Response arrived(
            @PathParam("number") String number, @Context UriInfo called, @Context HttpHeaders headers, byte[] body) {
        Caller caller = Caller.making(called, headers, body);
        return counter.answer(caller, () -> {
            int quantity = reader.arrived(body);
            int left = room.receive(number, quantity, caller.by())
                    .orElseThrow(() -> new ProblemException(Problem.of(
                            Fault.of(ProblemType.UNKNOWN_PART, "number", "The shelf has no place for this number.")
                                    .sent(number))));
            return counter.done(new ArrivalAnswer(number, quantity, left));
        });
    }
}
