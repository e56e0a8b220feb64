/**
 * Quantities and decisions: what a reading is worth, and what may be said of it against a limit.
 *
 * <p>Lengths are whole nanometres in a {@code long}, so a limit is never compared in binary fractions; temperatures are exact
 * as typed. Every type is immutable. No argument and no answer is null unless marked {@code @Nullable}. Arithmetic
 * that leaves the range of a {@code long} throws {@link ArithmeticException}; a value refused by a factory throws
 * {@link IllegalArgumentException} whose message names the value and the limit.
 *
 * <p>Method prefixes: {@code of} makes a value from parts already checked, {@code parse} from what a person typed,
 * {@code plus}, {@code minus} and {@code times} calculate, {@code to} shows the value in a unit, {@code is} asks.
 */
@NullMarked
package org.borewright.measure;

import org.jspecify.annotations.NullMarked;
