/** The orders of the shop: which there are, where each stands, and what can be done with it. */
@NullMarked
package org.borewright.page.order;

import org.jspecify.annotations.NullMarked;
