package org.borewright.catalog;

/** How the hole is made, and so what may be done to it (common practice). */
public enum Construction {
    /** Holes in an iron block, often without walls between them. */
    BLOCK("block", true, "a sleeve fitted in the hole"),
    /** A dry sleeve pressed into the block. */
    DRY_SLEEVE("dry sleeve", true, "another sleeve"),
    /** A liner that the coolant touches. */
    WET_LINER("wet liner", true, "another liner"),
    /** A free barrel of iron. */
    IRON_BARREL("iron barrel", true, "another barrel, or a sleeve fitted in this one"),
    /** An iron sleeve in an aluminium barrel. */
    SLEEVED_ALUMINIUM_BARREL("sleeved aluminium barrel", true, "another sleeve"),
    /** Aluminium with a plated wall: never bored. */
    PLATED("plated", false, "another barrel, or a new plating"),
    /** Aluminium rich in silicon, bare: never bored. */
    BARE_ALUMINIUM_SILICON("bare aluminium-silicon", false, "another block, or an iron sleeve");

    private final String label;
    private final boolean mayBeBored;
    private final String renewal;

    Construction(String label, boolean mayBeBored, String renewal) {
        this.label = label;
        this.mayBeBored = mayBeBored;
        this.renewal = renewal;
    }

    /** The words as typed and shown. */
    public String label() {
        return label;
    }

    /** Whether bar and hone may touch the wall; where not, only a set of the same size or a grade of it may go on. */
    public boolean mayBeBored() {
        return mayBeBored;
    }

    /** Whether a hole made so is in a barrel, and not in a block or a sleeve of one; a plated one is, unless it shares its casting. */
    public boolean isBarrel() {
        return this == IRON_BARREL || this == SLEEVED_ALUMINIUM_BARREL || this == PLATED;
    }

    /** What gives a hole new metal when it is worn too far: for a specialist to judge. */
    public String renewal() {
        return renewal;
    }
}
