package org.borewright.api.guard;

import io.netty.handler.codec.http.HttpResponseStatus;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;

/** Puts on every answer what keeps a browser from making more of it than it is, and keeps what changes out of every cache. */
@Singleton
class AnswerHeaders {

    private static final int BEFORE_ALL_ELSE = 2_000;

    void register(@Observes Filters filters) {
        filters.register(AnswerHeaders::onEveryAnswer, BEFORE_ALL_ELSE);
    }

    private static void onEveryAnswer(RoutingContext asked) {
        asked.addHeadersEndHandler(end -> {
            complete(asked.response().headers());
            if (asked.response().getStatusCode() == HttpResponseStatus.NOT_MODIFIED.code()) {
                // Where pages are packed, all else is marked as not packed; that is taken off again only with a body.
                asked.response().headers().remove(HttpHeaders.CONTENT_ENCODING);
            }
        });
        asked.next();
    }

    /** A path that knows better, such as a page with pictures or an answer that may be kept, says so itself. */
    private static void complete(MultiMap headers) {
        headers.remove(HttpHeaders.SERVER);
        headers.set("X-Content-Type-Options", "nosniff");
        setIfAbsent(headers, "Referrer-Policy", "no-referrer");
        setIfAbsent(headers, "Content-Security-Policy", "default-src 'none'; frame-ancestors 'none'; base-uri 'none'");
        setIfAbsent(headers, "Cross-Origin-Resource-Policy", "same-origin");
        setIfAbsent(headers, HttpHeaders.CACHE_CONTROL.toString(), "no-store");
    }

    private static void setIfAbsent(MultiMap headers, String name, String value) {
        if (!headers.contains(name)) {
            headers.set(name, value);
        }
    }
}
