package org.borewright.order;

/** Ends an errand that is refused, so that nothing of it stays. */
public final class RefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Refusal refusal;

    /** Refuses. */
    public RefusedException(Refusal refusal) {
        // No stack trace: it tells of the request, not of the code.
        super(refusal.toString(), null, false, false);
        this.refusal = refusal;
    }

    /** Why. */
    public Refusal refusal() {
        return refusal;
    }
}
