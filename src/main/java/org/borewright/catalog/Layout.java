package org.borewright.catalog;

/** How the cylinders stand. */
public enum Layout {
    /** One cylinder. */
    SINGLE("single", 1),
    /** Two side by side. */
    PARALLEL_TWIN("parallel twin", 2),
    /** Two in a V. */
    V_TWIN("V-twin", 2),
    /** Two facing away from each other. */
    FLAT_TWIN("flat twin", 2),
    /** Three in a row. */
    INLINE_THREE("inline three", 3),
    /** Four in a row. */
    INLINE_FOUR("inline four", 4),
    /** Six in a row. */
    INLINE_SIX("inline six", 6);

    private final String label;
    private final int cylinders;

    Layout(String label, int cylinders) {
        this.label = label;
        this.cylinders = cylinders;
    }

    /** The words as typed and shown. */
    public String label() {
        return label;
    }

    /** How many cylinders stand so. */
    public int cylinders() {
        return cylinders;
    }
}
