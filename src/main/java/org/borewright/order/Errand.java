package org.borewright.order;

/**
 * Who wants something done with an order.
 *
 * @param order its number
 * @param version of the order as they know it
 * @param by their name
 */
public record Errand(long order, int version, String by) {}
