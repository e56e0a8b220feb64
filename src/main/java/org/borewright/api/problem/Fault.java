package org.borewright.api.problem;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/**
 * One thing wrong with a request, or in its way.
 *
 * @param type the kind of problem it is
 * @param pointer where it stands: a JSON Pointer (RFC 6901) into the body, or the name of a parameter; absent where the request is not wrong
 * @param part the number of the box or part that is in its way; absent where it is something else
 * @param value what was sent, where it is short enough to repeat
 * @param limit what it is held against
 * @param reason what is wrong
 * @param wayOut what to do
 * @param suggestion what may have been meant
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Fault(
        @JsonIgnore ProblemType type,
        @Nullable String pointer,
        @Nullable String part,
        @Nullable Object value,
        @Nullable String limit,
        String reason,
        String wayOut,
        @Nullable Suggestion suggestion) {

    /** A fault with the usual way out of its type. */
    public static Fault of(ProblemType type, String pointer, String reason) {
        return new Fault(type, pointer, null, null, null, reason, type.wayOut(), null);
    }

    /** What stands in the way of a request that is not wrong: a part. */
    public static Fault ofPart(ProblemType type, String part, String reason) {
        return new Fault(type, null, part, null, null, reason, type.wayOut(), null);
    }

    /** The same fault with what was sent. */
    public Fault sent(@Nullable Object what) {
        return new Fault(type, pointer, part, what, limit, reason, wayOut, suggestion);
    }

    /** The same fault with what it is held against. */
    public Fault against(String what) {
        return new Fault(type, pointer, part, value, what, reason, wayOut, suggestion);
    }

    /** The same fault with another way out. */
    public Fault wayOut(String what) {
        return new Fault(type, pointer, part, value, limit, reason, what, suggestion);
    }

    /** The same fault with what may have been meant. */
    public Fault suggesting(Suggestion what) {
        return new Fault(type, pointer, part, value, limit, reason, wayOut, what);
    }
}
