/** What is told of orders. */
@NullMarked
package org.borewright.api.order.answer;

import org.jspecify.annotations.NullMarked;
