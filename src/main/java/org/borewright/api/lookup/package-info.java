/**
 * Looks up {@code engine}, {@code size}, {@code part} and {@code gauge}. What fits may be kept by whoever asks until the catalogue changes; price and
 * stock may not.
 */
@NullMarked
package org.borewright.api.lookup;

import org.jspecify.annotations.NullMarked;
