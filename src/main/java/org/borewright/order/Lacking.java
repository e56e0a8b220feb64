package org.borewright.order;

/**
 * Too few of a number.
 *
 * @param number of a box or loose part
 * @param wanted more than are put aside already
 * @param left on the shelf
 * @param canBeHad whether more can be ordered
 */
public record Lacking(String number, int wanted, int left, boolean canBeHad) {}
