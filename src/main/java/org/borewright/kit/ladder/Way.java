package org.borewright.kit.ladder;

/** A way to restore an engine, those that take less metal first. */
public enum Way {
    /** New rings on the pistons that are in it: nothing is cut. */
    RINGS_ONLY("rings only"),
    /** New pistons of the present size, or a larger grade of it, and no more than a hone. */
    HONE_ONLY("hone only"),
    /** The same where the wall is never cut, not even by a hone. */
    NEW_PISTONS("new pistons, the wall as it is"),
    /** Bored to a larger size. */
    REBORE("rebore"),
    /** A new sleeve: no sleeve stands in the catalogue, so a specialist is asked. */
    SLEEVE("sleeve");

    private final String label;

    Way(String label) {
        this.label = label;
    }

    /** The words as shown. */
    public String label() {
        return label;
    }
}
