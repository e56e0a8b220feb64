package org.borewright.api.guard;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemDocument;

/** Answers with a problem document where no endpoint was reached. */
@ApplicationScoped
class ProblemWriter {

    private final ObjectMapper json;
    private final Event<Unreached> unreached;

    ProblemWriter(ObjectMapper json, Event<Unreached> unreached) {
        this.json = json;
        this.unreached = unreached;
    }

    void answer(RoutingContext asked, Problem problem) {
        write(asked, ProblemDocument.of(problem, asked.request().path()));
    }

    void unexpected(RoutingContext asked, Throwable cause) {
        write(asked, UnexpectedFault.log(cause, asked.request().path()));
    }

    private void write(RoutingContext asked, ProblemDocument document) {
        if (asked.response().headWritten()) {
            asked.request().connection().close();
            return;
        }
        unreached.fire(new Unreached(asked, document));
        if (asked.response().ended()) {
            return;
        }
        asked.response()
                .setStatusCode(document.status())
                .putHeader(HttpHeaders.CONTENT_TYPE, ProblemDocument.MEDIA_TYPE)
                .end(bytes(document));
    }

    private Buffer bytes(ProblemDocument document) {
        try {
            return Buffer.buffer(json.writeValueAsBytes(document));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a problem document of plain texts cannot be written", impossible);
        }
    }
}
