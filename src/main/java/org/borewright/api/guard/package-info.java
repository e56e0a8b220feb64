/**
 * What stands before every path: the size of a body, the parameters of a query, the headers of an answer, and a last answer where no path
 * is found.
 */
@NullMarked
package org.borewright.api.guard;

import org.jspecify.annotations.NullMarked;
