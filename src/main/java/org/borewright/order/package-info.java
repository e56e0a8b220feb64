/** The life of an order, from the first call to the day the block leaves: where it stands, and what may be done next. */
@NullMarked
package org.borewright.order;

import org.jspecify.annotations.NullMarked;
