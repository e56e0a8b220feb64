/** The bill: what a kit needs, the boxes that cover it, the work of the shop and the torques to remember. */
@NullMarked
package org.borewright.kit.bill;

import org.jspecify.annotations.NullMarked;
