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
import org.borewright.api.match.answer.EstimateAnswer;
import org.borewright.api.match.answer.MatchAnswer;
import org.borewright.api.match.request.Asked;
import org.borewright.api.match.request.AskedEstimate;
import org.borewright.api.match.request.EstimateReader;
import org.borewright.api.match.request.MatchReader;
import org.borewright.kit.Match;
import org.borewright.kit.ladder.Estimate;

/**
 * Answers what an engine comes to once it is measured, and what it may come to before. Nothing it needs lies in the database, so it runs
 * on the event loop.
 */
@Path("/api")
@NonBlocking
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class MatchResource {

    private final MatchReader matches;
    private final EstimateReader estimates;
    private final Workbenches workbenches;
    private final ObjectMapper json;

    /** Made by the container. */
    public MatchResource(MatchReader matches, EstimateReader estimates, Workbenches workbenches, ObjectMapper json) {
        this.matches = matches;
        this.estimates = estimates;
        this.workbenches = workbenches;
        this.json = json;
    }

    /** A {@link MatchAnswer}, in one piece: written to a stream it would leave in chunks, and each of them costs a write. */
    @POST
    @Path("match")
    public byte[] match(@Context UriInfo called, byte[] body) throws JsonProcessingException {
        Parameters.none(called);
        return match(body);
    }

    /** What a body is answered with, whatever brought it here. */
    public byte[] match(byte[] body) throws JsonProcessingException {
        Asked asked = matches.read(body);
        Workbench bench = workbenches.of(asked);
        Match match = Match.of(bench.fits(), bench.kits(), asked.request());
        return json.writeValueAsBytes(
                MatchAnswer.of(bench.fits().shelf(), asked.request(), match, bench.in(asked.unit())));
    }

    /** An {@link EstimateAnswer}, likewise. */
    @POST
    @Path("estimate")
    public byte[] estimate(@Context UriInfo called, byte[] body) throws JsonProcessingException {
        Parameters.none(called);
        return estimate(body);
    }

    /** What a body is answered with, likewise. */
    public byte[] estimate(byte[] body) throws JsonProcessingException {
        AskedEstimate question = estimates.read(body);
        Asked asked = question.asked();
        Workbench bench = workbenches.of(asked);
        Estimate estimate = Estimate.of(bench.fits(), bench.kits(), asked.request());
        return json.writeValueAsBytes(
                EstimateAnswer.of(bench.fits().shelf(), question, estimate, bench.in(asked.unit())));
    }
}
