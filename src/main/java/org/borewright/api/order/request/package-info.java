/** What is asked of orders. */
@NullMarked
package org.borewright.api.order.request;

import org.jspecify.annotations.NullMarked;
