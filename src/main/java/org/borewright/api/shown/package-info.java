/**
 * How values are shown on the wire: lengths in the unit of the request with the exact nanometres beside, rounded so that what is shown never
 * flatters; checks with value, limit, margin, source and next step. Absent members are left out.
 */
@NullMarked
package org.borewright.api.shown;

import org.jspecify.annotations.NullMarked;
