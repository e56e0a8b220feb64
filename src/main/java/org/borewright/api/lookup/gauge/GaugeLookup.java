package org.borewright.api.lookup.gauge;

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
import org.borewright.api.lookup.Kept;
import org.borewright.api.lookup.Named;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.store.Shelves;
import org.borewright.measure.Gauge;
import org.borewright.measure.LengthUnit;

/** The gauges that a survey may name: all, or one. */
@Path("/api/gauges")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
public class GaugeLookup {

    private final Shelves shelves;
    private final Kept kept;

    GaugeLookup(Shelves shelves, Kept kept) {
        this.shelves = shelves;
        this.kept = kept;
    }

    /** The whole register. */
    @GET
    public Response gauges(@Context UriInfo asked, @Context HttpHeaders headers) {
        LengthUnit unit = Named.unitOf(asked);
        Catalogue catalogue = shelves.catalogue();
        return kept.answer(catalogue.revision(), headers, () -> GaugesAnswer.of(catalogue, unit));
    }

    /** The same, whatever the caller has already. */
    public GaugesAnswer known(LengthUnit unit) {
        return GaugesAnswer.of(shelves.catalogue(), unit);
    }

    /** One gauge. */
    @GET
    @Path("/{name}")
    public Response gauge(@PathParam("name") String name, @Context UriInfo asked, @Context HttpHeaders headers) {
        LengthUnit unit = Named.unitOf(asked);
        Catalogue catalogue = shelves.catalogue();
        Gauge gauge = Named.gauge(name, catalogue);
        return kept.answer(catalogue.revision(), headers, () -> GaugeAnswer.of(gauge, catalogue, unit));
    }
}
