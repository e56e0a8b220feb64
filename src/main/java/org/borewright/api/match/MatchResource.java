package org.borewright.api.match;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.borewright.api.guard.Parameters;
import org.borewright.api.match.answer.MatchAnswer;
import org.borewright.api.match.request.Asked;
import org.borewright.api.match.request.MatchReader;
import org.borewright.kit.Match;

/** Answers a match. Nothing it needs lies in the database, so it runs on the event loop. */
@Path("/api/match")
public class MatchResource {

    private final MatchReader reader;
    private final Workbenches workbenches;
    private final ObjectMapper json;

    /** Made by the container. */
    public MatchResource(MatchReader reader, Workbenches workbenches, ObjectMapper json) {
        this.reader = reader;
        this.workbenches = workbenches;
        this.json = json;
    }

    /** A {@link MatchAnswer}, in one piece: written to a stream it would leave in chunks, and each of them costs a write. */
    @POST
    @NonBlocking
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    public byte[] match(@Context UriInfo asked, byte[] body) throws JsonProcessingException {
        Parameters.none(asked);
        return answer(body);
    }

    /** What a body is answered with, whatever brought it here. */
    public byte[] answer(byte[] body) throws JsonProcessingException {
        Asked asked = reader.read(body);
        Workbench bench = workbenches.of(asked.fits(), asked.catalogue().offers());
        Match match = Match.of(bench.fits(), bench.kits(), asked.request());
        return json.writeValueAsBytes(
                MatchAnswer.of(bench.fits().shelf(), asked.request(), match, bench.in(asked.unit())));
    }
}
