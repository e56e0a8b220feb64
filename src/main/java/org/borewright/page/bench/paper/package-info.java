/** The papers of an order as they lie on the bench. */
@NullMarked
package org.borewright.page.bench.paper;

import org.jspecify.annotations.NullMarked;
