package org.borewright.catalog;

/** How the hole is made, and so what may be done to it (common practice). */
public enum Construction {
    /** Holes in an iron block, often without walls between them. */
    BLOCK("block", true),
    /** A dry sleeve pressed into the block. */
    DRY_SLEEVE("dry sleeve", true),
    /** A liner that the coolant touches. */
    WET_LINER("wet liner", true),
    /** A free barrel of iron. */
    IRON_BARREL("iron barrel", true),
    /** An iron sleeve in an aluminium barrel. */
    SLEEVED_ALUMINIUM_BARREL("sleeved aluminium barrel", true),
    /** Aluminium with a plated wall: never bored. */
    PLATED("plated", false),
    /** Aluminium rich in silicon, bare: never bored. */
    BARE_ALUMINIUM_SILICON("bare aluminium-silicon", false);

    private final String label;
    private final boolean mayBeBored;

    Construction(String label, boolean mayBeBored) {
        this.label = label;
        this.mayBeBored = mayBeBored;
    }

    /** The words as typed and shown. */
    public String label() {
        return label;
    }

    /** Whether bar and hone may touch the wall; where not, only a set of the same size or a grade of it may go on. */
    public boolean mayBeBored() {
        return mayBeBored;
    }
}
