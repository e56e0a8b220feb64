package org.borewright.order.desk;

/**
 * A question put about an order, and its whole answer.
 *
 * @param says what came of it, in a few words
 * @param request as it was sent
 * @param answer as it was given
 */
public record Paper(String says, String request, String answer) {

    private static final int LONGEST = 1_500;

    /** Shortens what came of it, where it is longer than a few words: all of it stands in the answer. */
    public Paper {
        says = shortened(says);
    }

    static String shortened(String says) {
        return says.length() <= LONGEST ? says : says.substring(0, LONGEST) + "…";
    }
}
