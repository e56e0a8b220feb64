/**
 * The errands of an order: each is one transaction, done whole or not at all, and leaves one line in the journal; one that lets go of parts, or
 * brings some, leaves one more for each order that is served with them.
 */
@NullMarked
package org.borewright.order.desk;

import org.jspecify.annotations.NullMarked;
