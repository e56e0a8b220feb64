/** A size as it is named in the answer to a match, and the readings and holes that would change it. */
@NullMarked
package org.borewright.api.match.answer.size;

import org.jspecify.annotations.NullMarked;
