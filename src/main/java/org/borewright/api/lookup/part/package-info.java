/** Parts and boxes by their number. */
@NullMarked
package org.borewright.api.lookup.part;

import org.jspecify.annotations.NullMarked;
