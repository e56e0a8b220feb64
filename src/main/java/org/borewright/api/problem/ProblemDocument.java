package org.borewright.api.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A problem on the wire (RFC 9457).
 *
 * @param type leads to the description of the kind
 * @param title of the kind
 * @param status the HTTP status
 * @param detail what happened this time
 * @param instance the path that was asked, or the id under which our own fault was logged
 * @param wayOut what to do
 * @param errors each fault of the request; absent where it is wrong as a whole
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ProblemDocument(
        String type, String title, int status, String detail, String instance, String wayOut, List<Fault> errors) {

    /** Its media type. */
    public static final String MEDIA_TYPE = "application/problem+json";

    /** The document of a problem. */
    public static ProblemDocument of(Problem problem, String instance) {
        return new ProblemDocument(
                problem.type().path(),
                problem.type().title(),
                problem.status(),
                problem.detail(),
                instance,
                problem.wayOut(),
                problem.faults());
    }
}
