package org.borewright.api.guard;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.impl.RoutingContextInternal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Locale;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemType;

/**
 * Refuses a body that is too large before anything reads it. What still comes in is let run off, so that the sender gets the answer
 * instead of a broken connection; beyond a last limit the connection is closed.
 */
@ApplicationScoped
class BodyLimit {

    /** The most bytes of a body. */
    static final int MOST_BYTES = 256 * 1024;

    private static final long MOST_RUN_OFF = 16L * 1024 * 1024;
    private static final int BEFORE_ALL_ELSE = 1_000;

    private final ProblemWriter problems;

    BodyLimit(ProblemWriter problems) {
        this.problems = problems;
    }

    void register(@Observes Filters filters) {
        filters.register(this::check, BEFORE_ALL_ELSE);
    }

    private void check(RoutingContext asked) {
        HttpServerRequest request = asked.request();
        String length = request.getHeader(HttpHeaders.CONTENT_LENGTH);
        boolean unknownLength = length == null && request.getHeader(HttpHeaders.TRANSFER_ENCODING) != null;
        if (length != null && !isWithinLimit(length)) {
            refuse(asked, 0);
        } else if (isCoded(request)) {
            problems.answer(
                    asked,
                    Problem.of(ProblemType.WRONG_MEDIA_TYPE, "The body is coded or compressed; it is read as it is."));
        } else if ((unknownLength || (length != null && !length.equals("0")))
                && request.getHeader(HttpHeaders.CONTENT_TYPE) == null) {
            problems.answer(asked, Problem.of(ProblemType.WRONG_MEDIA_TYPE, "The body comes without a Content-Type."));
        } else if (unknownLength) {
            collect(asked);
        } else {
            asked.next();
        }
    }

    private static boolean isCoded(HttpServerRequest request) {
        String coding = request.getHeader(HttpHeaders.CONTENT_ENCODING);
        return coding != null && !coding.equalsIgnoreCase("identity");
    }

    /** A length with more digits than this is beyond the limit in any case. */
    private static boolean isWithinLimit(String length) {
        return length.length() <= 9 && Integer.parseInt(length) <= MOST_BYTES;
    }

    /** A body of unknown length is taken in as it comes, up to the limit. */
    private void collect(RoutingContext asked) {
        HttpServerRequest request = asked.request();
        Buffer body = Buffer.buffer();
        if ("100-continue".equalsIgnoreCase(request.getHeader(HttpHeaders.EXPECT))) {
            asked.response().writeContinue();
            // Or the endpoint would say it again, in the midst of its answer.
            request.headers().remove(HttpHeaders.EXPECT);
        }
        request.handler(part -> {
            body.appendBuffer(part);
            if (body.length() > MOST_BYTES) {
                refuse(asked, body.length());
            }
        });
        request.endHandler(end -> {
            ((RoutingContextInternal) asked).setBody(body);
            asked.next();
        });
        request.resume();
    }

    private void refuse(RoutingContext asked, long alreadyCome) {
        HttpServerRequest request = asked.request();
        long[] come = {alreadyCome};
        request.handler(part -> {
            come[0] += part.length();
            if (come[0] > MOST_RUN_OFF) {
                request.connection().close();
            }
        });
        request.endHandler(end -> {});
        request.resume();
        problems.answer(
                asked,
                Problem.of(
                        ProblemType.BODY_TOO_LARGE,
                        String.format(Locale.ROOT, "The body is larger than %d bytes.", MOST_BYTES)));
    }
}
