package org.borewright.kit.hole;

/** What is done to a hole to bring it to a size. */
public enum Work {
    /** Bored, then honed. */
    REBORE("rebore"),
    /** Honed alone, at the present size or a larger grade of it. */
    HONE_ONLY("hone only"),
    /** Left as it is: it was finished already, or its wall is never cut. */
    AS_IS("as it is");

    private final String label;

    Work(String label) {
        this.label = label;
    }

    /** The words as shown. */
    public String label() {
        return label;
    }
}
