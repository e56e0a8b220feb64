package org.borewright.api.guard;

import io.vertx.ext.web.RoutingContext;
import org.borewright.api.problem.ProblemDocument;

/**
 * A request that is refused before it reached any endpoint. It is told before it is answered, so that who shows pages may answer it as one;
 * where nobody does, it is answered as a problem document.
 *
 * @param asked the request, not answered yet
 * @param document what was refused, why, and the way out
 */
public record Unreached(RoutingContext asked, ProblemDocument document) {}
