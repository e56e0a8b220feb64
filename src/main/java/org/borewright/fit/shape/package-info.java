/** The shapes of parts that the rules need: dimensions and windows, nothing commercial, no part numbers. All at 20 °C. */
@NullMarked
package org.borewright.fit.shape;

import org.jspecify.annotations.NullMarked;
