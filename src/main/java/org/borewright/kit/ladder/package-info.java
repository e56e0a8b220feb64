/** The ways to restore an engine, in the order of the metal they take out: new rings, a hone, a rebore, a sleeve. */
@NullMarked
package org.borewright.kit.ladder;

import org.jspecify.annotations.NullMarked;
