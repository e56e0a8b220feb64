package org.borewright.api.order.answer;

/**
 * What arrived.
 *
 * @param number of a box or loose part
 * @param quantity how many
 * @param left how many are left on the shelf, without those put aside for orders
 */
public record ArrivalAnswer(String number, int quantity, int left) {}
