package org.borewright.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** Answers with pages. */
public final class Page {

    /** The media type of a page. */
    public static final String MEDIA_TYPE = MediaType.TEXT_HTML + ";charset=UTF-8";

    private Page() {}

    /** A page. */
    public static Response of(TemplateInstance page) {
        return of(200, page);
    }

    /** A page with another status, as one that shows what is wrong with a form. */
    public static Response of(int status, TemplateInstance page) {
        return Response.status(status).type(MEDIA_TYPE).entity(page.render()).build();
    }

    /** After a change: the page that shows it, asked for anew, so that asking once more changes nothing. */
    public static Response seeOther(String path) {
        return Response.seeOther(URI.create(path)).build();
    }
}
