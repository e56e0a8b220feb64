/**
 * What a machinist asks with the pistons in hand: before honing, which piston to which hole and what to hone to; after honing, whether it
 * is good. Pure, as the match is.
 */
@NullMarked
package org.borewright.kit.bench;

import org.jspecify.annotations.NullMarked;
