/** The errands of an order: each is one transaction, done whole or not at all, and leaves one line in the journal. */
@NullMarked
package org.borewright.order.desk;

import org.jspecify.annotations.NullMarked;
