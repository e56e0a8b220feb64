package org.borewright.api.guard;

import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.List;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemType;

/** Answers what no endpoint answers: faults met on the way to one. */
@Singleton
class LastResort {

    private static final int FIRST = -1_000_000;

    private final ProblemWriter problems;

    LastResort(ProblemWriter problems) {
        this.problems = problems;
    }

    void register(@Observes Router router) {
        router.errorHandler(ProblemType.BAD_REQUEST.status(), this::unreadable);
        router.route().last().handler(this::unknownPath);
        router.route().order(FIRST).failureHandler(this::failed);
    }

    /** A request without a host, or of a path that is none, is refused before any route is asked. */
    private void unreadable(RoutingContext asked) {
        problems.answer(asked, Problem.of(ProblemType.BAD_REQUEST, "The request line or the Host header is wrong."));
    }

    private void unknownPath(RoutingContext asked) {
        problems.answer(asked, Problem.unknownPath(asked.request().path()));
    }

    private void failed(RoutingContext asked) {
        int status = asked.statusCode();
        Throwable cause = asked.failure();
        if (status == ProblemType.UNKNOWN_PATH.status()) {
            unknownPath(asked);
        } else if (status >= 400 && status < 500) {
            problems.answer(
                    asked,
                    new Problem(ProblemType.BAD_REQUEST, status, "The request cannot be understood.", List.of()));
        } else {
            problems.unexpected(asked, cause == null ? new IllegalStateException("status " + status) : cause);
        }
    }
}
