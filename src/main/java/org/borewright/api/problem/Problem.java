package org.borewright.api.problem;

import java.util.List;
import java.util.Optional;

/**
 * Why a request is not answered.
 *
 * @param type the kind
 * @param status the HTTP status
 * @param detail what happened this time, in one sentence
 * @param faults of the request, where it can be said which part is wrong
 * @param thisTime what to do about this one; empty where its one fault says it, or its kind
 */
public record Problem(ProblemType type, int status, String detail, List<Fault> faults, Optional<String> thisTime) {

    /** Copies the faults. */
    public Problem {
        faults = List.copyOf(faults);
    }

    /** One whose faults say what to do, or its kind does. */
    public Problem(ProblemType type, int status, String detail, List<Fault> faults) {
        this(type, status, detail, faults, Optional.empty());
    }

    /** A problem of the request as a whole. */
    public static Problem of(ProblemType type, String detail) {
        return new Problem(type, type.status(), detail, List.of());
    }

    /** A problem of the request as a whole, and what to do this time. */
    public static Problem of(ProblemType type, String detail, String wayOut) {
        return new Problem(type, type.status(), detail, List.of(), Optional.of(wayOut));
    }

    /** What to do: this time, of its one fault, else of its kind. */
    public String wayOut() {
        return thisTime.orElseGet(() -> faults.size() == 1 ? faults.get(0).wayOut() : type.wayOut());
    }

    /** The problem of a path that leads nowhere. */
    public static Problem unknownPath(String path) {
        return of(ProblemType.UNKNOWN_PATH, "There is nothing at " + path + ".");
    }

    /** A problem that one fault explains. */
    public static Problem of(Fault fault) {
        return new Problem(fault.type(), fault.type().status(), fault.reason(), List.of(fault));
    }
}
