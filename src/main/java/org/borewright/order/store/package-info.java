/** Orders and what belongs to them, as they lie in the tables. A field is null exactly where its column may be, so nothing here is marked. */
@NullUnmarked
package org.borewright.order.store;

import org.jspecify.annotations.NullUnmarked;
