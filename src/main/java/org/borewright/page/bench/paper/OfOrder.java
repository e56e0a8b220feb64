package org.borewright.page.bench.paper;

import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.UriInfo;
import org.jspecify.annotations.NullUnmarked;

/** Which order a page is asked about. The container fills it in. */
@NullUnmarked
public class OfOrder {

    @PathParam("order")
    String order;

    @Context
    UriInfo called;

    /** The number of the order as it stands in the path. */
    public String order() {
        return order;
    }
}
