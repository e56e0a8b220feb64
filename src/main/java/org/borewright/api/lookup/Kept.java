package org.borewright.api.lookup;

import io.quarkus.runtime.ApplicationConfig;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.borewright.catalog.Revision;

/** Answers that may be kept: they change only with what fits, and with the version of this service. */
@Singleton
public class Kept {

    private static final int FRESH_SECONDS = 60;

    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

    private final String version;

    Kept(ApplicationConfig service) {
        this.version = service.version().orElse("");
    }

    /** The answer, or nothing but 304 for one who has it already. */
    public Response answer(Revision revision, HttpHeaders asked, Supplier<?> body) {
        EntityTag tag = new EntityTag(revision.fit() + "-" + version);
        Response.ResponseBuilder answer = isKnown(tag, asked) ? Response.notModified() : Response.ok(body.get());
        return answer.tag(tag).cacheControl(shortly()).build();
    }

    /** The weak comparison of RFC 9110, 13.1.2; a header that is no list of tags matches none. */
    private static boolean isKnown(EntityTag tag, HttpHeaders asked) {
        String known = String.join(
                ",", Objects.requireNonNullElse(asked.getRequestHeader(HttpHeaders.IF_NONE_MATCH), List.of()));
        // Tags are told by their quotes, for a comma may stand within one; the star counts only alone.
        return known.strip().equals("*")
                || QUOTED.matcher(known)
                        .results()
                        .anyMatch(found -> found.group(1).equals(tag.getValue()));
    }

    private static CacheControl shortly() {
        CacheControl shortly = new CacheControl();
        shortly.setPrivate(false);
        shortly.getCacheExtension().put("public", "");
        shortly.setNoTransform(false);
        shortly.setMaxAge(FRESH_SECONDS);
        return shortly;
    }
}
