package org.borewright.order.desk;

/**
 * A question put about an order, and its whole answer.
 *
 * @param says what came of it, in a few words
 * @param request as it was sent
 * @param answer as it was given
 */
public record Paper(String says, String request, String answer) {}
