/** Quotes on paper, for a customer. */
@NullMarked
package org.borewright.api.order.print;

import org.jspecify.annotations.NullMarked;
