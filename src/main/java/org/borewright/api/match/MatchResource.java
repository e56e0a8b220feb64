package org.borewright.api.match;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.borewright.api.match.request.Asked;
import org.borewright.api.match.request.MatchReader;
import org.borewright.kit.Match;

/** Answers a match. Nothing it needs lies in the database, so it runs on the event loop. */
@Path("/api/match")
public class MatchResource {

    private final MatchReader reader;
    private final KitFinders kitFinders;

    /** Made by the container. */
    public MatchResource(MatchReader reader, KitFinders kitFinders) {
        this.reader = reader;
        this.kitFinders = kitFinders;
    }

    /** One size for the engine and a complete kit, or what stands in the way. */
    @POST
    @NonBlocking
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    public MatchAnswer match(byte[] body) {
        Asked asked = reader.read(body);
        Match match = Match.of(
                asked.fits(), kitFinders.of(asked.fits(), asked.catalogue().offers()), asked.request());
        return MatchAnswer.of(asked.fits().shelf(), asked.request(), match, asked.unit());
    }
}
