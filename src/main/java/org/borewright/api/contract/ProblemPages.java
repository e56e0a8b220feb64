package org.borewright.api.contract;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.Arrays;
import java.util.List;
import org.borewright.api.guard.Parameters;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;

/** The descriptions that the type of a problem leads to. */
@Path("/problems")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
public class ProblemPages {

    /**
     * What a kind of problem means.
     *
     * @param type its URI reference
     * @param title what it is
     * @param status the status it is answered with
     * @param meaning what it means
     * @param wayOut what to do
     */
    public record Description(String type, String title, int status, String meaning, String wayOut) {

        static Description of(ProblemType type) {
            return new Description(type.path(), type.title(), type.status(), type.meaning(), type.wayOut());
        }
    }

    /**
     * All kinds.
     *
     * @param problems in the order of their status
     */
    public record Descriptions(List<Description> problems) {}

    /** Lists them. */
    @GET
    public Descriptions all(@Context UriInfo asked) {
        Parameters.none(asked);
        return new Descriptions(
                Arrays.stream(ProblemType.values()).map(Description::of).toList());
    }

    /** Describes the one of a slug. */
    @GET
    @Path("/{problem}")
    public Description one(@PathParam("problem") String slug, @Context UriInfo asked) {
        Parameters.none(asked);
        return ProblemType.of(slug)
                .map(Description::of)
                .orElseThrow(() -> new ProblemException(Problem.of(
                        ProblemType.UNKNOWN_PATH, "There is no problem of this name; /problems lists them all.")));
    }
}
