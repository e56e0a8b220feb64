package org.borewright.api.guard;

import jakarta.inject.Singleton;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Tells whoever asks for the methods of a path the same as one who used a wrong one; the framework of itself adds HEAD to every path. */
@Singleton
final class AllowedMethods {

    private final Routes routes;

    AllowedMethods(Routes routes) {
        this.routes = routes;
    }

    @ServerResponseFilter
    void tell(ContainerRequestContext asked, ContainerResponseContext answer) {
        if (asked.getMethod().equals(HttpMethod.OPTIONS) && routes.leadSomewhere(asked.getUriInfo())) {
            answer.getHeaders().putSingle(HttpHeaders.ALLOW, String.join(", ", routes.methods(asked.getUriInfo())));
        }
    }
}
