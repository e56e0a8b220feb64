/** The bench card of an order: what is done to each hole, to print and to fill in at the machine. */
@NullMarked
package org.borewright.page.card;

import org.jspecify.annotations.NullMarked;
