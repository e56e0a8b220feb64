package org.borewright.kit.bench;

/** Whether the hone may go in. */
public enum Readiness {
    /** Every hole has its measured piston, its size and its window. */
    READY("ready"),
    /** Nothing stands against it, but a hole has no measured piston yet: bore, and hone only once its piston is measured. */
    PROVISIONAL("provisional"),
    /** Nothing is proven against it, but a piston that goes in is nearer to its tolerance than its gauge can tell. */
    TOO_CLOSE("too close to call"),
    /** Something must be settled before anything is cut. */
    HOLD("hold");

    private final String label;

    Readiness(String label) {
        this.label = label;
    }

    /** The word as shown. */
    public String label() {
        return label;
    }
}
