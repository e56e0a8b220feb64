/** The answers of the bench on the wire. */
@NullMarked
package org.borewright.api.bench.answer;

import org.jspecify.annotations.NullMarked;
