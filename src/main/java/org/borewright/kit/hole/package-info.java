/** Each hole of a request, and what becomes of it at a size. */
@NullMarked
package org.borewright.kit.hole;

import org.jspecify.annotations.NullMarked;
