package org.borewright.catalog;

/** How the engine breathes. */
public enum Strokes {
    /** Ports in the wall; no oil ring, and that is no lack. */
    TWO(2),
    /** Valves in the head. */
    FOUR(4);

    private final int count;

    Strokes(int count) {
        this.count = count;
    }

    /** Two or four. */
    public int count() {
        return count;
    }
}
