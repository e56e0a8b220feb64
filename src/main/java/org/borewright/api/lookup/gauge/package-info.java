/** The register of gauges. */
@NullMarked
package org.borewright.api.lookup.gauge;

import org.jspecify.annotations.NullMarked;
