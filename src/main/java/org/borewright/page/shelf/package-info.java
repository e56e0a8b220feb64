/** The shelf as the parts keeper looks at it: what lies there for each engine and size, what is short, what came. */
@NullMarked
package org.borewright.page.shelf;

import org.jspecify.annotations.NullMarked;
