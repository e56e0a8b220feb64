package org.borewright.api.problem;

/** Carries a problem from where it is found to where it is answered. */
public final class ProblemException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    /** A problem to be answered. */
    public ProblemException(Problem problem) {
        // No stack trace: it tells of the request, not of the code, and bad requests must stay cheap.
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    /** What to answer. */
    public Problem problem() {
        return problem;
    }
}
