package org.borewright.order.journal;

/**
 * What a line of an order speaks of, besides what it says.
 *
 * @param version that the order had from this line on
 * @param written digest of the rows that were written with it: papers, quotes, holes
 * @param standing digest of the order as it stood from this line on, and of what was held for it
 */
public record Matter(int version, String written, String standing) {}
