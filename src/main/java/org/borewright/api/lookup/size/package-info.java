/** What goes into an engine at a size: what fits, and apart from it what that costs and whether it is there. */
@NullMarked
package org.borewright.api.lookup.size;

import org.jspecify.annotations.NullMarked;
