package org.borewright.fit;

import org.borewright.measure.Decision;

/** How a check ended. */
public enum Outcome {
    /** Proven within its limit. */
    IN("in"),
    /** Beyond its limit. */
    OUT("out"),
    /** Nearer to the limit than the uncertainty of the reading: a hold. */
    TOO_CLOSE("too close to call"),
    /** Something needed is not known: a hold. */
    UNKNOWN("not known"),
    /** Outside what can be reckoned or does not apply here; said, and no hold. */
    NOT_CHECKED("not checked");

    private final String label;

    Outcome(String label) {
        this.label = label;
    }

    /** The words as shown. */
    public String label() {
        return label;
    }

    /** Whether the answer may not pass while this stands. */
    public boolean holds() {
        return this != IN && this != NOT_CHECKED;
    }

    static Outcome of(Decision decision) {
        return switch (decision) {
            case IN -> IN;
            case OUT -> OUT;
            case TOO_CLOSE -> TOO_CLOSE;
        };
    }
}
