package org.borewright.order.desk;

/**
 * That what can be had from the shelf is another than before.
 *
 * @param position of the line of the journal that says so
 */
public record StockMoved(long position) {}
