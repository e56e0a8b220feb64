package org.borewright.catalog;

/** Which hole a part is made for, where holes differ: left and right, front and rear are not oversizes. */
public enum Hand {
    /** Any hole. */
    ANY("any"),
    /** The left hole, seen from the seat. */
    LEFT("left"),
    /** The right hole, seen from the seat. */
    RIGHT("right"),
    /** The front hole. */
    FRONT("front"),
    /** The rear hole. */
    REAR("rear");

    private final String label;

    Hand(String label) {
        this.label = label;
    }

    /** The word as typed and shown. */
    public String label() {
        return label;
    }

    /** Whether a part of this hand may go into a hole of that hand. */
    public boolean goesInto(Hand hole) {
        return this == ANY || this == hole;
    }
}
