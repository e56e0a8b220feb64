package org.borewright.api.bench;

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
import org.borewright.api.bench.answer.BenchAnswer;
import org.borewright.api.bench.answer.FinishAnswer;
import org.borewright.api.bench.request.BenchReader;
import org.borewright.api.bench.request.FinishReader;
import org.borewright.api.bench.request.Question;
import org.borewright.api.guard.Parameters;
import org.borewright.kit.bench.BenchPlan;
import org.borewright.kit.bench.BenchRequest;
import org.borewright.kit.bench.finish.Finish;
import org.borewright.kit.bench.finish.FinishRequest;

/** Answers what is asked before and after honing. Nothing it needs lies in the database, so it runs on the event loop. */
@Path("/api")
@NonBlocking
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class BenchResource {

    private final BenchReader plans;
    private final FinishReader finishes;
    private final ObjectMapper json;

    /** Made by the container. */
    public BenchResource(BenchReader plans, FinishReader finishes, ObjectMapper json) {
        this.plans = plans;
        this.finishes = finishes;
        this.json = json;
    }

    /** A {@link BenchAnswer}, in one piece as a match. */
    @POST
    @Path("bench")
    public byte[] plan(@Context UriInfo called, byte[] body) throws JsonProcessingException {
        Parameters.none(called);
        Question<BenchRequest> asked = plans.read(body);
        BenchPlan answer = BenchPlan.of(asked.fits(), asked.request());
        return json.writeValueAsBytes(BenchAnswer.of(asked.fits(), asked.request(), answer, asked.unit()));
    }

    /** A {@link FinishAnswer}, likewise. */
    @POST
    @Path("finish")
    public byte[] judge(@Context UriInfo called, byte[] body) throws JsonProcessingException {
        Parameters.none(called);
        Question<FinishRequest> asked = finishes.read(body);
        Finish answer = Finish.of(asked.fits(), asked.request());
        return json.writeValueAsBytes(FinishAnswer.of(asked.fits(), asked.request(), answer, asked.unit()));
    }
}
