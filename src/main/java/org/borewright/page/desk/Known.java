package org.borewright.page.desk;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How much is known of the holes. */
public enum Known {
    /** Nothing is measured; a crown told the present size. */
    STAMP("A stamp on the crown"),
    /** The largest diameter of each hole. */
    BORES("One diameter of each hole"),
    /** Readings at several depths along two axes. */
    SURVEY("A full survey");

    private final String label;

    Known(String label) {
        this.label = label;
    }

    /** The words shown. */
    public String label() {
        return label;
    }

    /** The word in an address. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether holes are described, which is a question for a match; else it is one for an estimate. */
    public boolean isOfHoles() {
        return this != STAMP;
    }

    /** The one of a word; one diameter each where it is none of them. */
    static Known of(@Nullable String word) {
        for (Known known : values()) {
            if (known.word().equals(word)) {
                return known;
            }
        }
        return BORES;
    }
}
