package org.borewright.order;

/** What a tag of the shop hangs on: one tag is never on both. */
public enum BlockKind {
    /** A block with its holes, or a set of barrels that stay together. */
    BLOCK("block"),
    /** A barrel that may be swapped between blocks. */
    BARREL("barrel");

    private final String label;

    BlockKind(String label) {
        this.label = label;
    }

    /** The word as shown. */
    public String label() {
        return label;
    }
}
