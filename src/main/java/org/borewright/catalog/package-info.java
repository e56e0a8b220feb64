/**
 * What is on the shelf: engines, the sizes they are rebuilt to, parts with their shapes, boxes, prices and stock, all as immutable
 * values of one catalogue revision. Technique stands in the sub-rooms {@code store} (rows) and {@code load} (CSV).
 */
@NullMarked
package org.borewright.catalog;

import org.jspecify.annotations.NullMarked;
