package org.borewright.api.guard;

import jakarta.inject.Singleton;
import jakarta.ws.rs.NotAcceptableException;
import jakarta.ws.rs.NotAllowedException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.NotSupportedException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemDocument;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.desk.ExactlyOnce;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Answers every exception with a problem document: ours as they say, those of the framework in our words, the rest as our own fault. */
@Singleton
final class FaultAnswers {

    private static final int RETRY_AFTER_SECONDS = 1;

    private final Routes routes;

    FaultAnswers(Routes routes) {
        this.routes = routes;
    }

    @ServerExceptionMapper
    RestResponse<ProblemDocument> problem(ProblemException found, UriInfo asked) {
        return found.problem().type() == ProblemType.BUSY
                ? busy(found.problem(), asked)
                : answer(found.problem(), asked).build();
    }

    private static RestResponse<ProblemDocument> busy(Problem problem, UriInfo asked) {
        return answer(problem, asked)
                .header(HttpHeaders.RETRY_AFTER, RETRY_AFTER_SECONDS)
                .build();
    }

    @ServerExceptionMapper
    RestResponse<ProblemDocument> unknownPath(NotFoundException found, UriInfo asked, Request request) {
        // Of two endpoints on one path the framework asks only the last for the method.
        if (routes.leadSomewhere(asked)) {
            return wrongMethod(asked, request);
        }
        return answer(Problem.unknownPath(path(asked)), asked).build();
    }

    @ServerExceptionMapper
    RestResponse<ProblemDocument> wrongMethod(NotAllowedException found, UriInfo asked, Request request) {
        return wrongMethod(asked, request);
    }

    private RestResponse<ProblemDocument> wrongMethod(UriInfo asked, Request request) {
        String allowed = String.join(", ", routes.methods(asked));
        String detail = String.format(Locale.ROOT, "%s answers %s, not %s.", path(asked), allowed, request.getMethod());
        return answer(Problem.of(ProblemType.WRONG_METHOD, detail), asked)
                .header(HttpHeaders.ALLOW, allowed)
                .build();
    }

    @ServerExceptionMapper
    RestResponse<ProblemDocument> notAcceptable(NotAcceptableException found, UriInfo asked, Request request) {
        String detail = "The Accept header allows no form this path answers in.";
        String made = String.join(" or ", routes.made(asked, request.getMethod()));
        String wayOut = "Ask for " + made + ", or leave the Accept header out.";
        return answer(
                        made.isEmpty()
                                ? Problem.of(ProblemType.NOT_ACCEPTABLE, detail)
                                : Problem.of(ProblemType.NOT_ACCEPTABLE, detail, wayOut),
                        asked)
                .build();
    }

    @ServerExceptionMapper
    RestResponse<ProblemDocument> wrongMediaType(NotSupportedException found, UriInfo asked, HttpHeaders headers) {
        String sent = headers.getHeaderString(HttpHeaders.CONTENT_TYPE);
        String detail =
                sent == null ? "The request has no Content-Type." : "The body is sent as another type than JSON.";
        return answer(Problem.of(ProblemType.WRONG_MEDIA_TYPE, detail), asked).build();
    }

    @ServerExceptionMapper
    RestResponse<ProblemDocument> framework(WebApplicationException found, UriInfo asked) {
        int status = found.getResponse().getStatus();
        if (status >= 500) {
            return unexpected(found, asked);
        }
        Problem problem = new Problem(ProblemType.BAD_REQUEST, status, "The request cannot be understood.", List.of());
        return answer(problem, asked).build();
    }

    @ServerExceptionMapper
    RestResponse<ProblemDocument> unexpected(Throwable cause, UriInfo asked) {
        if (ExactlyOnce.othersWereInTheWay(cause)) {
            return busy(Problem.of(ProblemType.BUSY, "Others held the same things for too long."), asked);
        }
        return document(UnexpectedFault.log(cause, path(asked))).build();
    }

    private static RestResponse.ResponseBuilder<ProblemDocument> answer(Problem problem, UriInfo asked) {
        return document(ProblemDocument.of(problem, path(asked)));
    }

    private static RestResponse.ResponseBuilder<ProblemDocument> document(ProblemDocument document) {
        return RestResponse.ResponseBuilder.<ProblemDocument>create(document.status())
                .entity(document)
                .type(ProblemDocument.MEDIA_TYPE);
    }

    private static String path(UriInfo asked) {
        return asked.getRequestUri().getRawPath();
    }
}
