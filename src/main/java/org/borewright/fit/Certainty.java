package org.borewright.fit;

/** Whether a size will clean a hole up, or new rings alone will do. */
public enum Certainty {
    /** Even if all wear is on one wall. */
    CERTAIN("certain"),
    /** If the wear is shared, not if it is all on one wall: the wall must be probed. */
    POSSIBLE("possible"),
    /** Not even if the wear is shared evenly. */
    NO("no");

    private final String label;

    Certainty(String label) {
        this.label = label;
    }

    /** The word as shown. */
    public String label() {
        return label;
    }

    /** The less certain of the two. */
    public Certainty and(Certainty other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
