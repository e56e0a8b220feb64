package org.borewright.catalog;

import java.util.OptionalInt;

/**
 * Price and stock of one number.
 *
 * @param number which
 * @param price of one
 * @param onHand how many lie on the shelf, not negative
 * @param leadDays how many days more of them take; empty when no more can be had
 */
public record Offer(PartNumber number, Money price, int onHand, OptionalInt leadDays) {

    /** The same with so many more on the shelf. */
    Offer withMore(int count) {
        return new Offer(number, price, onHand + count, leadDays);
    }
}
