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
 */
public record Deed(
        String by, String subject, Optional<Long> order, String did, String before, String after, boolean movesStock) {}
