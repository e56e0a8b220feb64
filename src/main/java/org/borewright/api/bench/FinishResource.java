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
import org.borewright.api.bench.answer.FinishAnswer;
import org.borewright.api.bench.request.FinishReader;
import org.borewright.api.bench.request.Question;
import org.borewright.api.guard.Parameters;
import org.borewright.kit.bench.finish.Finish;
import org.borewright.kit.bench.finish.FinishRequest;

/** Answers what is asked after honing. Nothing it needs lies in the database, so it runs on the event loop. */
@Path("/api/finish")
public class FinishResource {

    private final FinishReader reader;
    private final ObjectMapper json;

    /** Made by the container. */
    public FinishResource(FinishReader reader, ObjectMapper json) {
        this.reader = reader;
        this.json = json;
    }

    /** A {@link FinishAnswer}, in one piece as a match. */
    @POST
    @NonBlocking
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    public byte[] judge(@Context UriInfo called, byte[] body) throws JsonProcessingException {
        Parameters.none(called);
        Question<FinishRequest> asked = reader.read(body);
        Finish answer = Finish.of(asked.fits(), asked.request());
        return json.writeValueAsBytes(FinishAnswer.of(asked.fits(), asked.request(), answer, asked.unit()));
    }
}
