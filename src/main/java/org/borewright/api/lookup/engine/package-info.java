/** Engines: many in short, or one with all that is asked of it. */
@NullMarked
package org.borewright.api.lookup.engine;

import org.jspecify.annotations.NullMarked;
