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
import org.borewright.api.match.request.Asked;
import org.borewright.api.match.request.AskedEstimate;
import org.borewright.api.match.request.EstimateReader;
import org.borewright.kit.ladder.Estimate;

/** Answers what an engine may come to before it is measured. Nothing it needs lies in the database, so it runs on the event loop. */
@Path("/api/estimate")
public class EstimateResource {

    private final EstimateReader reader;
    private final Workbenches workbenches;
    private final ObjectMapper json;

    /** Made by the container. */
    public EstimateResource(EstimateReader reader, Workbenches workbenches, ObjectMapper json) {
        this.reader = reader;
        this.workbenches = workbenches;
        this.json = json;
    }

    /** An {@link EstimateAnswer}, in one piece as a match. */
    @POST
    @NonBlocking
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    public byte[] estimate(@Context UriInfo called, byte[] body) throws JsonProcessingException {
        Parameters.none(called);
        return answer(body);
    }

    /** What a body is answered with, whatever brought it here. */
    public byte[] answer(byte[] body) throws JsonProcessingException {
        AskedEstimate question = reader.read(body);
        Asked asked = question.asked();
        Workbench bench = workbenches.of(asked.fits(), asked.catalogue().offers());
        Estimate estimate = Estimate.of(bench.fits(), bench.kits(), asked.request());
        return json.writeValueAsBytes(
                EstimateAnswer.of(bench.fits().shelf(), question, estimate, bench.in(asked.unit())));
    }
}
