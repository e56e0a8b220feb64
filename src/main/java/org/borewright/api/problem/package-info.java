/**
 * What is answered when a request cannot be: a problem document (RFC 9457), all faults at once, each with what was sent, the limit, the
 * reason and the way out, in the words of the trade.
 */
@NullMarked
package org.borewright.api.problem;

import org.jspecify.annotations.NullMarked;
