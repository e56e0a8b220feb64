/** Tells others of changes as they happen: every line of the journal, in order, signed, until they have taken it. */
@NullMarked
package org.borewright.api.hook;

import org.jspecify.annotations.NullMarked;
