/** The answer to a match on the wire: records that build themselves from the heart, and the stencils of what they repeat. */
@NullMarked
package org.borewright.api.match.answer;

import org.jspecify.annotations.NullMarked;
