package org.borewright.kit.request;

/** What state the holes are in. */
public enum Condition {
    /** Run, and to be restored. */
    WORN("worn"),
    /** Bored and honed already: pistons are matched to them. */
    FINISHED("finished");

    private final String label;

    Condition(String label) {
        this.label = label;
    }

    /** The word as typed and shown. */
    public String label() {
        return label;
    }
}
