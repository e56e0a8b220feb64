/** What a machinist asks with the pistons in hand: before honing a plan, after honing a judgement. */
@NullMarked
package org.borewright.api.bench;

import org.jspecify.annotations.NullMarked;
