package org.borewright.kit.ladder;

import java.util.Optional;
import org.borewright.measure.Length;

/**
 * The reading that decides whether a way will do: how large the largest hole may read.
 *
 * @param certainFrom for the way to be certain, how small a hole may read that is never cut and must give its piston room; empty where the
 *     smallest hole of the present size does, and where metal is taken out
 * @param certainUpTo for the way to be certain, all wear on one wall; empty where no reading makes it so
 * @param possibleUpTo for it to be possible at all, the wear shared evenly; empty where none does, or what is certain is all that is possible
 */
public record LargestHole(Optional<Length> certainFrom, Optional<Length> certainUpTo, Optional<Length> possibleUpTo) {}
