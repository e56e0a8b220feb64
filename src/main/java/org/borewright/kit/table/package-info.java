/** Every size for the holes of one request: what becomes of each hole at it, and what a reading would change. */
@NullMarked
package org.borewright.kit.table;

import org.jspecify.annotations.NullMarked;
