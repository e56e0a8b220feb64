/** The bill: what a kit needs, the boxes that cover it, and the work of the shop. */
@NullMarked
package org.borewright.kit.bill;

import org.jspecify.annotations.NullMarked;
