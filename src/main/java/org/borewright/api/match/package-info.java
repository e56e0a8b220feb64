/** The match over HTTP: the request read with all its faults at once, the answer in the unit of the request. */
@NullMarked
package org.borewright.api.match;

import org.jspecify.annotations.NullMarked;
