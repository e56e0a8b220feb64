/** Pictures of the bench. They show figures that stand in a table beside them; what they reckon is where a line goes. */
@NullMarked
package org.borewright.page.bench.picture;

import org.jspecify.annotations.NullMarked;
