package org.borewright.api.order;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.borewright.api.guard.Parameters;
import org.borewright.api.order.answer.JournalAnswer;
import org.borewright.api.order.answer.VerificationAnswer;
import org.borewright.api.order.request.OrderQuery;
import org.borewright.order.store.JournalProof;
import org.borewright.order.store.JournalRow;

/** The journal: a page of it, which asked again is a feed of all changes, and whether it is whole. */
@Path("/api/journal")
@Produces(MediaType.APPLICATION_JSON)
public class JournalResource {

    private static final int AT_ONCE = 1_000;

    /** Lines after a position, of one order or of all. */
    @GET
    @Transactional
    public JournalAnswer lines(@Context UriInfo called) {
        Parameters parameters = new Parameters(called);
        long after = OrderQuery.after(parameters);
        int limit = parameters.whole("limit", 1, AT_ONCE, 100);
        Optional<Long> order = parameters
                .number("order", BigDecimal.ONE, BigDecimal.valueOf(999_999_999_999_999_999L), 0)
                .map(BigDecimal::longValueExact);
        parameters.end();
        return lines(after, order, limit);
    }

    /** The same, of a question that was read. */
    @Transactional
    public JournalAnswer lines(long after, Optional<Long> order, int limit) {
        List<JournalRow> rows = order.map(number -> JournalRow.after(after, number, limit))
                .orElseGet(() -> JournalRow.after(after, limit));
        return JournalAnswer.of(after, rows);
    }

    /** Whether every line follows from the one before, and all that it speaks of is as it was. */
    @GET
    @Path("verification")
    public VerificationAnswer verification(@Context UriInfo called) {
        Parameters.none(called);
        return VerificationAnswer.of(JournalProof.now());
    }
}
