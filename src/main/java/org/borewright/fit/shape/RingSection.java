package org.borewright.fit.shape;

/** The cross-section of a ring and of the groove it belongs to (words of ISO 6621-1). */
public enum RingSection {
    /** Parallel faces: width and play can be reckoned. */
    RECTANGULAR("rectangular"),
    /** Wedge-shaped: fits by part number only, its play cannot be reckoned from widths. */
    KEYSTONE("keystone");

    private final String label;

    RingSection(String label) {
        this.label = label;
    }

    /** The word as typed and shown. */
    public String label() {
        return label;
    }
}
