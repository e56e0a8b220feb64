package org.borewright.api.problem;

import java.util.List;

/**
 * Why a request is not answered.
 *
 * @param type the kind
 * @param status the HTTP status
 * @param detail what happened this time, in one sentence
 * @param faults of the request, where it can be said which part is wrong
 */
public record Problem(ProblemType type, int status, String detail, List<Fault> faults) {

    /** Copies the faults. */
    public Problem {
        faults = List.copyOf(faults);
    }

    /** A problem of the request as a whole. */
    public static Problem of(ProblemType type, String detail) {
        return new Problem(type, type.status(), detail, List.of());
    }

    /** What to do: of its one fault, else of its kind. */
    public String wayOut() {
        return faults.size() == 1 ? faults.get(0).wayOut() : type.wayOut();
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
