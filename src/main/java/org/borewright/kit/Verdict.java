package org.borewright.kit;

/** What may be done now. */
public enum Verdict {
    /** One size serves the whole engine, proven, with a complete kit. */
    SERVES("serves"),
    /** A size is named, finished holes differ or a reading is queried: something must be settled before anything is cut or fitted. */
    HOLD("hold"),
    /** No size is certain; some are possible, and a reading would decide. */
    NO_CERTAIN_SIZE("no certain size"),
    /** No size serves all holes: a sleeve, or a specialist. */
    NO_COMMON_SIZE("no common size"),
    /** A cylinder is beyond machining: no kit. */
    REFER("refer to a specialist");

    private final String label;

    Verdict(String label) {
        this.label = label;
    }

    /** The words as shown. */
    public String label() {
        return label;
    }
}
