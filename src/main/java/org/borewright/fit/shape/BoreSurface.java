package org.borewright.fit.shape;

/** What the rings run on. */
public enum BoreSurface {
    /** Cast iron, of the block or of a sleeve. */
    IRON("iron"),
    /** Hard chromium on aluminium. */
    CHROME("chrome"),
    /** Nickel with hard particles on aluminium. */
    NICKEL("nickel"),
    /** Bare aluminium with silicon standing proud. */
    SILICON("silicon");

    private final String label;

    BoreSurface(String label) {
        this.label = label;
    }

    /** The word as typed and shown. */
    public String label() {
        return label;
    }
}
