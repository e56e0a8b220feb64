package org.borewright.api.lookup.size;

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
import org.borewright.api.FitTables;
import org.borewright.api.guard.Parameters;
import org.borewright.api.lookup.Kept;
import org.borewright.api.lookup.Named;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.Size;
import org.borewright.catalog.store.Shelves;
import org.borewright.measure.LengthUnit;

/** What goes into an engine at a size: what fits may be kept, price and stock may not, so they are two answers. */
@Path("/api/engines/{engine}/sizes/{size}")
@Produces(MediaType.APPLICATION_JSON)
@NonBlocking
public class SizeLookup {

    private final Shelves shelves;
    private final FitTables fits;
    private final Kept kept;

    SizeLookup(Shelves shelves, FitTables fits, Kept kept) {
        this.shelves = shelves;
        this.fits = fits;
        this.kept = kept;
    }

    /** What fits. */
    @GET
    @Path("/fit")
    public Response fit(
            @PathParam("engine") String code,
            @PathParam("size") String label,
            @Context UriInfo asked,
            @Context HttpHeaders headers) {
        LengthUnit unit = Named.unitOf(asked);
        Catalogue catalogue = shelves.catalogue();
        Shelf shelf = Named.engine(code, catalogue);
        Size size = Named.size(label, shelf);
        return kept.answer(catalogue.revision(), headers, () -> FitAnswer.of(catalogue, fits.of(shelf), size, unit));
    }

    /** Price and stock. */
    @GET
    @Path("/offers")
    public OffersAnswer offers(
            @PathParam("engine") String code, @PathParam("size") String label, @Context UriInfo asked) {
        Parameters.none(asked);
        Catalogue catalogue = shelves.catalogue();
        Shelf shelf = Named.engine(code, catalogue);
        return OffersAnswer.of(catalogue, shelf.engine().code(), Named.size(label, shelf));
    }
}
