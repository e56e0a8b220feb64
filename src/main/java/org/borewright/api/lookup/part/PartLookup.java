package org.borewright.api.lookup.part;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.borewright.api.lookup.Named;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.store.Shelves;
import org.borewright.measure.LengthUnit;

/** What is known of a number. */
@Path("/api/parts")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
public class PartLookup {

    private final Shelves shelves;

    PartLookup(Shelves shelves) {
        this.shelves = shelves;
    }

    /** One number. */
    @GET
    @Path("/{number}")
    public PartAnswer part(@PathParam("number") String number, @Context UriInfo asked) {
        LengthUnit unit = Named.unitOf(asked);
        Catalogue catalogue = shelves.catalogue();
        return PartAnswer.of(catalogue, Named.part(number, catalogue), unit);
    }
}
