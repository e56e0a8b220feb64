package org.borewright.page;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpServerResponse;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.net.URI;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.borewright.api.guard.Unreached;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemDocument;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.jspecify.annotations.Nullable;

/** What holds of every page: whose forms are taken, what a browser may load, and refusals in words. */
@Singleton
final class PageGuard {

    /** Nothing comes from elsewhere, no style or script stands in a page, and no page stands in another. */
    static final String POLICY =
            "default-src 'none'; style-src 'self'; script-src 'self'; connect-src 'self'; img-src 'self' data:;"
                    + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** What changes nothing, and may be asked from anywhere. */
    private static final List<String> LOOKING = List.of(HttpMethod.GET, HttpMethod.HEAD);

    private static final Pattern OF_THE_API = Pattern.compile("/*api(/.*)?", Pattern.DOTALL);

    /** Whatever type the body is said to have: one of wildcards is taken for that of a form. */
    @ServerRequestFilter(preMatching = true)
    void takeOwnFormsAlone(ContainerRequestContext asked) {
        if (isForAPage(asked) && !LOOKING.contains(asked.getMethod()) && !isOfOurs(asked)) {
            throw new ProblemException(new Problem(
                    ProblemType.BAD_REQUEST,
                    403,
                    "The form was sent from a page of another site; open the page here and send its own form.",
                    List.of()));
        }
    }

    /** A change by the API needs a header of ours, which no browser sends for another site unasked. */
    private static boolean isForAPage(ContainerRequestContext asked) {
        return !OF_THE_API.matcher(asked.getUriInfo().getPath()).matches();
    }

    /** A browser tells where a form came from in the one header, an older one or one without encryption in the other. */
    private static boolean isOfOurs(ContainerRequestContext asked) {
        String site = asked.getHeaderString("Sec-Fetch-Site");
        if (site != null) {
            return List.of("same-origin", "none").contains(site);
        }
        String origin = asked.getHeaderString("Origin");
        return origin == null || isHost(origin, asked.getHeaderString(HttpHeaders.HOST));
    }

    private static boolean isHost(String origin, @Nullable String host) {
        try {
            return URI.create(origin).getRawAuthority() != null
                    && URI.create(origin).getRawAuthority().equalsIgnoreCase(host);
        } catch (IllegalArgumentException noAddress) {
            return false;
        }
    }

    @ServerResponseFilter
    void complete(ContainerRequestContext asked, ContainerResponseContext answer) {
        if (answer.getEntity() instanceof ProblemDocument problem
                && isForAPerson(
                        asked.getUriInfo().getRequestUri().getRawPath(), asked.getHeaderString(HttpHeaders.ACCEPT))) {
            answer.setEntity(new ProblemPage(problem).render(), null, MediaType.valueOf(Page.MEDIA_TYPE));
        }
        MediaType type = answer.getMediaType();
        if (type != null && type.isCompatible(MediaType.TEXT_HTML_TYPE)) {
            lock((name, value) -> answer.getHeaders().putSingle(name, value));
        }
    }

    /** A refusal before any endpoint was reached, as of a body that is too large or a path that is none. */
    void show(@Observes Unreached refusal) {
        HttpServerRequest asked = refusal.asked().request();
        if (isForAPerson(asked.path(), asked.getHeader(HttpHeaders.ACCEPT))) {
            HttpServerResponse answer = refusal.asked().response();
            lock((name, value) -> answer.putHeader(name, value));
            answer.setStatusCode(refusal.document().status())
                    .putHeader(HttpHeaders.CONTENT_TYPE, Page.MEDIA_TYPE)
                    .end(new ProblemPage(refusal.document()).render());
        }
    }

    private static void lock(BiConsumer<String, String> header) {
        header.accept("Content-Security-Policy", POLICY);
        header.accept("Referrer-Policy", "same-origin");
    }

    /** Whoever asks the API gets JSON, with a browser too. */
    private static boolean isForAPerson(@Nullable String path, @Nullable String accepted) {
        return path != null
                && accepted != null
                && accepted.contains(MediaType.TEXT_HTML)
                && !path.startsWith("/api")
                && !path.startsWith("/problems");
    }
}
