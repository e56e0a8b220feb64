package org.borewright.api.order.request;

import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.UriInfo;
import org.jspecify.annotations.NullUnmarked;

/** What every change of an order is sent with besides its body. The container fills it in. */
@NullUnmarked
public class Sent {

    @PathParam("order")
    String order;

    @Context
    UriInfo called;

    @Context
    HttpHeaders headers;

    /** The number of the order as it stands in the path. */
    public String order() {
        return order;
    }

    /** Who sends it, under which key, meant for which version. @throws ProblemException if one of them is missing */
    public Caller caller(byte[] body) {
        return Caller.changing(called, headers, body);
    }
}
