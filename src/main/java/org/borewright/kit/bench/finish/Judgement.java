package org.borewright.kit.bench.finish;

/** What is said of a finished hole, and of all of them. */
public enum Judgement {
    /** Proven good. */
    PASS("pass"),
    /** Neither proven good nor proven bad: a better gauge decides. */
    TOO_CLOSE("too close to call"),
    /** Proven bad, or not measured: not to be built so. */
    HOLD("hold");

    private final String label;

    Judgement(String label) {
        this.label = label;
    }

    /** The words as shown. */
    public String label() {
        return label;
    }

    /** The worse of the two. */
    Judgement and(Judgement other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
