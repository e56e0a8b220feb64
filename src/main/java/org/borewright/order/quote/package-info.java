/** What a customer is offered: parts, work, tax and deposit, as they stood on the day. */
@NullMarked
package org.borewright.order.quote;

import org.jspecify.annotations.NullMarked;
