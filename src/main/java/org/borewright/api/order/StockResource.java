package org.borewright.api.order;

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
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.borewright.api.asked.Place;
import org.borewright.api.guard.Parameters;
import org.borewright.api.order.answer.ArrivalAnswer;
import org.borewright.api.order.answer.ShelfAnswer;
import org.borewright.api.order.request.Caller;
import org.borewright.api.order.request.OrderReader;
import org.borewright.api.problem.Fault;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.store.Stock;
import org.borewright.order.desk.StockRoom;
import org.borewright.order.store.ReservationRow;

/** The shelf: what lies there now, and what arrives. */
@Path("/api/stock/{number}")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class StockResource {

    private final OrderReader reader;
    private final Stock stock;
    private final StockRoom room;
    private final Counter counter;

    StockResource(OrderReader reader, Stock stock, StockRoom room, Counter counter) {
        this.reader = reader;
        this.stock = stock;
        this.room = room;
        this.counter = counter;
    }

    /** What lies there at this moment. */
    @GET
    @Transactional
    public ShelfAnswer now(@PathParam("number") String number, @Context UriInfo called) {
        Parameters.none(called);
        return stock.place(readable(number))
                .map(place -> ShelfAnswer.of(place, ReservationRow.toCome(number)))
                .orElseThrow(() -> noPlace(number));
    }

    /** Lays so many on the shelf; what orders wait for is put aside at once, the oldest first. */
    @POST
    @Path("arrivals")
    public Response arrived(
            @PathParam("number") String number, @Context UriInfo called, @Context HttpHeaders headers, byte[] body) {
        Caller caller = Caller.making(called, headers, body);
        return counter.answer(caller, () -> {
            int quantity = reader.arrived(body);
            StockRoom.Arrived arrived =
                    room.receive(readable(number), quantity, caller.by()).orElseThrow(() -> noPlace(number));
            return counter.done(ArrivalAnswer.of(number, quantity, arrived));
        });
    }

    /** A NUL is no text to every database, and so in no number. */
    private static String readable(String number) {
        if (number.indexOf('\0') >= 0) {
            throw noPlace(number);
        }
        return number;
    }

    private static ProblemException noPlace(String number) {
        return new ProblemException(
                Problem.of(Fault.of(ProblemType.UNKNOWN_PART, "number", "The shelf has no place for this number.")
                        .sent(Place.shortened(number))));
    }
}
