/** What must be said beside an answer, and when. */
@NullMarked
package org.borewright.kit.caution;

import org.jspecify.annotations.NullMarked;
