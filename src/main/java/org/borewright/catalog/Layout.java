package org.borewright.catalog;

/** How the cylinders stand. */
public enum Layout {
    /** One cylinder. */
    SINGLE("single"),
    /** Two side by side. */
    PARALLEL_TWIN("parallel twin"),
    /** Two in a V. */
    V_TWIN("V-twin"),
    /** Two facing away from each other. */
    FLAT_TWIN("flat twin"),
    /** Three in a row. */
    INLINE_THREE("inline three"),
    /** Four in a row. */
    INLINE_FOUR("inline four"),
    /** Six in a row. */
    INLINE_SIX("inline six");

    private final String label;

    Layout(String label) {
        this.label = label;
    }

    /** The words as typed and shown. */
    public String label() {
        return label;
    }
}
