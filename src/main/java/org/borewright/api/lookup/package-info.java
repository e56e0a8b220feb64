/**
 * Looks up {@code engine}, {@code size} and {@code part}. What fits may be kept by whoever asks until the catalogue changes; price and
 * stock may not.
 */
@NullMarked
package org.borewright.api.lookup;

import org.jspecify.annotations.NullMarked;
