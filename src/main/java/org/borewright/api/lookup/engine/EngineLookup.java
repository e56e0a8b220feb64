package org.borewright.api.lookup.engine;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.borewright.api.guard.Parameters;
import org.borewright.api.lookup.Kept;
import org.borewright.api.lookup.Named;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.store.Shelves;
import org.borewright.measure.LengthUnit;

/** Engines: many in short, or one with all that is asked of it. */
@Path("/api/engines")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
public class EngineLookup {

    private final Shelves shelves;
    private final Kept kept;

    EngineLookup(Shelves shelves, Kept kept) {
        this.shelves = shelves;
        this.kept = kept;
    }

    /** The engines that answer a query. */
    @GET
    public Response engines(@Context UriInfo asked, @Context HttpHeaders headers) {
        EngineQuery query = EngineQuery.read(new Parameters(asked));
        Catalogue catalogue = shelves.catalogue();
        return kept.answer(catalogue.revision(), headers, () -> EnginesAnswer.of(catalogue, query, asked));
    }

    /** The same, whatever the caller has already. */
    public EnginesAnswer found(UriInfo asked) {
        return EnginesAnswer.of(shelves.catalogue(), EngineQuery.read(new Parameters(asked)), asked);
    }

    /** One engine. */
    @GET
    @Path("/{engine}")
    public Response engine(@PathParam("engine") String code, @Context UriInfo asked, @Context HttpHeaders headers) {
        LengthUnit unit = Named.unitOf(asked);
        Shelf shelf = Named.engine(code, shelves.catalogue());
        return kept.answer(shelf.revision(), headers, () -> EngineAnswer.of(shelf, unit));
    }

    /** The same in the unit that its oversizes step in. @throws ProblemException if no engine bears the code */
    public EngineAnswer known(String code) {
        Shelf shelf = Named.engine(code, shelves.catalogue());
        return EngineAnswer.of(shelf, shelf.engine().build().steps());
    }

    /** The same, whatever the caller has already. @throws ProblemException if no engine bears the code */
    public EngineAnswer known(String code, LengthUnit unit) {
        return EngineAnswer.of(Named.engine(code, shelves.catalogue()), unit);
    }
}
