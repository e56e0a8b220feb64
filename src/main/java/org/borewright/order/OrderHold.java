package org.borewright.order;

import java.util.List;

/**
 * Why the bench does not let an order go on.
 *
 * @param reason in a few words
 * @param says what holds and where, in one sentence
 * @param next the way out
 * @param cylinders it concerns
 * @param pistons it concerns, by their tags
 */
public record OrderHold(String reason, String says, String next, List<String> cylinders, List<String> pistons) {

    /** Copies the lists. */
    public OrderHold {
        cylinders = List.copyOf(cylinders);
        pistons = List.copyOf(pistons);
    }
}
