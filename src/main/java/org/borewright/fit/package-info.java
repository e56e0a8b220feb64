/**
 * The rules of the trade, one small class each, with its source. A rule takes shapes and readings and answers with {@link Check}s;
 * it knows no part numbers, no catalogue and no clock. {@link Rule} lists all rules in the order a machinist asks them.
 *
 * <p>Part against part is exact and inclusive; a measured value is judged with its expanded uncertainty. Every figure
 * marked common practice stands in {@link CommonPractice} and is a default that the engine's own data override.
 */
@NullMarked
package org.borewright.fit;

import org.jspecify.annotations.NullMarked;
