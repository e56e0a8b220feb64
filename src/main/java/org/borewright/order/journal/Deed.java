package org.borewright.order.journal;

import java.util.Optional;

/**
 * Something that was done.
 *
 * @param by who did it
 * @param subject what it concerns, such as {@code order 12}
 * @param order its number; empty where it concerns none
 * @param did what was done
 * @param before what stood before, empty where nothing did
 * @param after what stands now
 * @param movesStock whether other parts can be had from the shelf than before
 * @param matter what it speaks of besides; empty where it concerns no order
 */
public record Deed(
        String by,
        String subject,
        Optional<Long> order,
        String did,
        String before,
        String after,
        boolean movesStock,
        Optional<Matter> matter) {

    /** As much as a line holds. */
    private static final int LONGEST = 4_000;

    /** Shortens what is longer than a line holds: what it speaks of is kept, and sealed, whole. */
    public Deed {
        before = shortened(before);
        after = shortened(after);
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "…";
    }
}
